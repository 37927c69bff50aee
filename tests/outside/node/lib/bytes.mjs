// Byte helpers: big-endian integers, hex, lower-case base32 (RFC 4648 alphabet, no padding), 16-byte tags.
// Everything here refuses what does not fit instead of cutting it.

export const concat = (...parts) => {
  const out = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
};

const unsigned = (bytes) => (value) => {
  let rest = BigInt(value);
  if (rest < 0n || rest >= 1n << BigInt(8 * bytes)) throw new Error(`${value} does not fit ${bytes} bytes`);
  const out = new Uint8Array(bytes);
  for (let at = bytes - 1; at >= 0; --at) {
    out[at] = Number(rest & 255n);
    rest >>= 8n;
  }
  return out;
};

export const u8 = unsigned(1);
export const u16 = unsigned(2);
export const u32 = unsigned(4);
export const u48 = unsigned(6);
export const u64 = unsigned(8);

// Little-endian, only where an outside cipher definition asks for it.
export const le32 = (value) => u32(value).reverse();
export const le64 = (value) => u64(value).reverse();

export const zero = (count) => new Uint8Array(count);
export const fill = (count, byte) => new Uint8Array(count).fill(byte);
export const text = (string) => new TextEncoder().encode(string);
export const hex = (bytes) => Buffer.from(bytes).toString('hex');
export const unhex = (string) => new Uint8Array(Buffer.from(string, 'hex'));

export const fixed = (bytes, length) => {
  if (bytes.length > length) throw new Error(`${bytes.length} bytes do not fit ${length}`);
  return concat(bytes, zero(length - bytes.length));
};

export const tag16 = (name) => fixed(text(name), 16);

export const compare = (a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b));
export const equal = (a, b) => compare(a, b) === 0;

export const base32 = (bytes) => {
  const alphabet = 'abcdefghijklmnopqrstuvwxyz234567';
  let out = '';
  let held = 0;
  let bits = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      out += alphabet[(held >> bits) & 31];
      held &= (1 << bits) - 1;
    }
  }
  return bits > 0 ? out + alphabet[(held << (5 - bits)) & 31] : out;
};
