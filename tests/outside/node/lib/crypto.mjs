// The cryptographic constructions that the ledger's page names, built on @noble primitives and on the public
// descriptions of the constructions themselves. Nothing random: every seed is passed in.

import { blake2b } from '@noble/hashes/blake2.js';
import { argon2id } from '@noble/hashes/argon2.js';
import { sha512 } from '@noble/hashes/sha2.js';
import { ed25519, x25519 } from '@noble/curves/ed25519.js';
import { chacha20, hchacha, xchacha20poly1305 } from '@noble/ciphers/chacha.js';
import { hsalsa, xsalsa20poly1305 } from '@noble/ciphers/salsa.js';
import { poly1305 } from '@noble/ciphers/_poly1305.js';
import { concat, equal, fixed, le32, le64, tag16, text, u8, zero } from './bytes.mjs';

export const H = (tag, ...parts) => blake2b(concat(tag16(tag), ...parts), { dkLen: 32 });
export const plain_hash = (...parts) => blake2b(concat(...parts), { dkLen: 32 });
export const id16 = (tag, ...parts) => H(tag, ...parts).slice(0, 16);

// crypto_kdf: BLAKE2b keyed with the master key, salt = number (little-endian), personalisation = context.
export const subkey = (key, number, context = 'limbseal') =>
  blake2b(zero(0), { key, dkLen: 32, salt: concat(le64(number), zero(8)), personalization: fixed(text(context), 16) });

export const keyed_blake2b_192 = (key, message) => blake2b(message, { key, dkLen: 24 });

export const sign_pair = (seed) => ({ seed, pub: ed25519.getPublicKey(seed) });
export const sign = (seed, ...parts) => ed25519.sign(concat(...parts), seed);
export const verify = (pub, signature, ...parts) => ed25519.verify(signature, concat(...parts), pub);

export const box_pair = (secret) => ({ secret, pub: x25519.getPublicKey(secret) });

// crypto_box_seed_keypair: the secret half is the first 32 bytes of SHA-512 of the seed.
const box_pair_from_seed = (seed) => box_pair(sha512(seed).slice(0, 32));

const words = (bytes) => {
  const copy = bytes.slice();
  return new Uint32Array(copy.buffer, copy.byteOffset, copy.length / 4);
};
const bytes_of = (u32s) => new Uint8Array(u32s.buffer, u32s.byteOffset, u32s.byteLength).slice();

const sigma = words(text('expand 32-byte k'));

const box_key = (secret, pub) => {
  const out = new Uint32Array(8);
  hsalsa(sigma, words(x25519.getSharedSecret(secret, pub)), words(zero(16)), out);
  return bytes_of(out);
};

const box_nonce = (ephemeral_pub, pub) => blake2b(concat(ephemeral_pub, pub), { dkLen: 24 });

// crypto_box_seal with the ephemeral pair made from a seed: 32 public, 16 tag, ciphertext.
export const seal_box = (pub, message, seed) => {
  const ephemeral = box_pair_from_seed(seed);
  const key = box_key(ephemeral.secret, pub);
  return concat(ephemeral.pub, xsalsa20poly1305(key, box_nonce(ephemeral.pub, pub)).encrypt(message));
};

export const open_box = (pair, sealed) => {
  const ephemeral_pub = sealed.slice(0, 32);
  const key = box_key(pair.secret, ephemeral_pub);
  return xsalsa20poly1305(key, box_nonce(ephemeral_pub, pair.pub)).decrypt(sealed.slice(32));
};

export const seal_aead = (key, nonce, aad, message) => xchacha20poly1305(key, nonce, aad).encrypt(message);
export const open_aead = (key, nonce, aad, sealed) => xchacha20poly1305(key, nonce, aad).decrypt(sealed);

export const passphrase_key = (passphrase, salt, t, m_kib) =>
  argon2id(text(passphrase), salt, { t, m: m_kib, p: 1, dkLen: 32, version: 0x13 });

// ISO/IEC 7816-4: one 0x80, then zeros up to the next multiple of the block.
export const pad = (bytes, block = 64) => {
  const length = (Math.floor(bytes.length / block) + 1) * block;
  return fixed(concat(bytes, u8(0x80)), length);
};

export const unpad = (bytes) => {
  let end = bytes.length;
  while (end > 0 && bytes[end - 1] === 0) --end;
  if (end === 0 || bytes[end - 1] !== 0x80) throw new Error('padding');
  return bytes.slice(0, end - 1);
};

// crypto_secretstream_xchacha20poly1305, from its public description. Two peculiarities are kept because the stream
// is only compatible with them: the 64-byte tag block is authenticated whole, and the padding after the ciphertext
// is (message length mod 16) zero bytes, not the count that would complete a block.
export const STREAM_MESSAGE = 0x00;
export const STREAM_FINAL = 0x03;
const STREAM_REKEY = 0x02;

export class SecretStream {
  constructor(key, header) {
    const out = new Uint32Array(8);
    hchacha(sigma, words(key), words(header.slice(0, 16)), out);
    this.key = bytes_of(out);
    this.counter = 1;
    this.inner = header.slice(16, 24);
  }

  nonce() {
    return concat(le32(this.counter), this.inner);
  }

  xor(message, block) {
    return chacha20(this.key, this.nonce(), message, undefined, block);
  }

  mac(aad, tag_block, ciphertext) {
    const mac = poly1305.create(this.xor(zero(32), 0));
    mac.update(aad);
    mac.update(zero((16 - (aad.length % 16)) % 16));
    mac.update(tag_block);
    mac.update(ciphertext);
    mac.update(zero(ciphertext.length % 16));
    mac.update(le64(aad.length));
    mac.update(le64(64 + ciphertext.length));
    return mac.digest();
  }

  advance(mac, tag) {
    for (let at = 0; at < 8; ++at) this.inner[at] ^= mac[at];
    this.counter = (this.counter + 1) >>> 0;
    if ((tag & STREAM_REKEY) !== 0 || this.counter === 0) {
      const next = this.xor(concat(this.key, this.inner), 0);
      this.key = next.slice(0, 32);
      this.inner = next.slice(32, 40);
      this.counter = 1;
    }
  }

  push(message, aad, tag) {
    const tag_block = this.xor(fixed(u8(tag), 64), 1);
    const ciphertext = this.xor(message, 2);
    const mac = this.mac(aad, tag_block, ciphertext);
    this.advance(mac, tag);
    return concat(tag_block.slice(0, 1), ciphertext, mac);
  }

  pull(sealed, aad) {
    const ciphertext = sealed.slice(1, sealed.length - 16);
    const opened = this.xor(fixed(sealed.slice(0, 1), 64), 1);
    const tag = opened[0];
    const tag_block = concat(sealed.slice(0, 1), opened.slice(1));
    const mac = this.mac(aad, tag_block, ciphertext);
    if (!equal(mac, sealed.slice(sealed.length - 16))) throw new Error('stream chunk does not verify');
    const message = this.xor(ciphertext, 2);
    this.advance(mac, tag);
    return { message, tag };
  }
}
