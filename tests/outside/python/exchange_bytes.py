# stage: outside
"""Worked bytes of an exchange's messages and of enrolment, made from schemas/ledger-format.md (sections 4, 7, 10 and 12)
with Python's own BLAKE2b and the signature scheme as RFC 8032, section 6, writes it; none of it is the program's.

  exchange_bytes.py            compares with tests/outside/data/exchange_bytes.json; exit 1 where anything differs
  exchange_bytes.py --write    writes that file
"""

import hashlib
import json
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
KEPT = HERE.parent / "data" / "exchange_bytes.json"

# Ed25519, after RFC 8032, section 6 and appendix A.
P = 2**255 - 19
L = 2**252 + 27742317777372353535851937790883648493
D = -121665 * pow(121666, P - 2, P) % P


def add(a, b):
    e = (a[1] - a[0]) * (b[1] - b[0]) % P
    f = (a[1] + a[0]) * (b[1] + b[0]) % P
    g = 2 * a[3] * b[3] * D % P
    h = 2 * a[2] * b[2] % P
    x, y, z, t = f - e, h - g, h + g, f + e
    return (x * y % P, z * t % P, y * z % P, x * t % P)


def times(scalar, point):
    out = (0, 1, 1, 0)
    while scalar:
        if scalar & 1:
            out = add(out, point)
        point = add(point, point)
        scalar >>= 1
    return out


def recover_x(y, odd):
    square = (y * y - 1) * pow(D * y * y + 1, P - 2, P) % P
    x = pow(square, (P + 3) // 8, P)
    if (x * x - square) % P:
        x = x * pow(2, (P - 1) // 4, P) % P
    return P - x if x & 1 != odd else x


BASE_Y = 4 * pow(5, P - 2, P) % P
BASE_X = recover_x(BASE_Y, 0)
BASE = (BASE_X, BASE_Y, 1, BASE_X * BASE_Y % P)


def packed(point):
    inverse = pow(point[2], P - 2, P)
    x, y = point[0] * inverse % P, point[1] * inverse % P
    return (y | ((x & 1) << 255)).to_bytes(32, "little")


def expanded(seed):
    digest = hashlib.sha512(seed).digest()
    scalar = int.from_bytes(digest[:32], "little") & ((1 << 254) - 8) | (1 << 254)
    return scalar, digest[32:]


def public(seed):
    return packed(times(expanded(seed)[0], BASE))


def sign(seed, message):
    scalar, prefix = expanded(seed)
    pub = packed(times(scalar, BASE))
    r = int.from_bytes(hashlib.sha512(prefix + message).digest(), "little") % L
    point = packed(times(r, BASE))
    h = int.from_bytes(hashlib.sha512(point + pub + message).digest(), "little") % L
    return point + ((r + h * scalar) % L).to_bytes(32, "little")


# The page's notation.
def tag(name):
    return name.encode().ljust(16, b"\0")


def H(*parts):
    return hashlib.blake2b(b"".join(parts), digest_size=32).digest()


def u(size, value):
    return value.to_bytes(size, "big")


def header(kind, flags, length, ms, counter):
    return bytes([1, kind, 0, flags]) + u(4, length) + u(6, ms) + u(2, counter) + bytes(16)


START_MS = 1764000000000
ROOT, HUB, TABLET = bytes([1]) * 32, bytes([0x0B]) * 32, bytes([0x0C]) * 32
ROOT_PUB = public(ROOT)
CLINIC = H(tag("limb.clinic.1"), ROOT_PUB)[:16]
X = bytes([0x2A]) * 32


class Chain:
    def __init__(self, seed):
        self.seed, self.pub = seed, public(seed)
        self.replica = H(tag("limb.replica.1"), CLINIC, self.pub)[:16]
        self.e = [H(tag("limb.chain.1"), CLINIC, self.replica, self.pub)]
        self.entries = []

    def add(self, kind, body, flags=1):
        head = header(kind, flags, len(body), START_MS + len(self.entries), 0)
        b = H(tag("limb.body.1"), body)
        self.e.append(H(tag("limb.entry.1"), self.e[-1], u(8, len(self.entries) + 1), head, b))
        self.entries.append(head + body)

    def introduce(self, device):
        program = b"invented 1"
        self.add(3, bytes([1, 1, 3, 0]) + CLINIC + self.pub + bytes([7]) * 32 + device + bytes(120) + u(2, len(program)) + program)

    def place(self, seq):
        return self.replica + u(8, seq) + self.e[seq]

    def have(self, seq, flags=0):
        return self.replica + u(8, seq) + self.e[seq][:8] + u(1, flags)

    def head(self, seq):
        return self.place(seq) + sign(self.seed, tag("limb.head.1") + CLINIC + self.place(seq))

    def run(self, first, last):
        entries = b"".join(b"\0" + one for one in self.entries[first - 1:last])
        return self.replica + u(8, first) + self.e[first - 1] + u(4, last - first + 1) + entries + self.head(last)


def digest(*chains):
    return H(tag("limb.have.1"), *sorted(chain.place(len(chain.entries)) + b"\0" for chain in chains))


def cases():
    hub, tablet = Chain(HUB), Chain(TABLET)
    hub.introduce(bytes([0x1B]) * 16)
    tablet.introduce(bytes([0x1C]) * 16)
    for count in range(5):
        tablet.add(200, bytes([0x40 + count]) * (count + 1))
    hint = H(tag("limb.hint.1"), CLINIC, X)[:8]
    front = b"\1\0" + hint + tablet.replica + digest(tablet)
    hello = b"\1" + front + sign(TABLET, tag("limb.hello.1") + X + front)
    status = b"\1" + digest(hub)
    same = b"\2" + status + sign(HUB, tag("limb.same.1") + X + status) + hub.have(1)
    points = [6, 5, 4, 2]  # the leaf, then 1, 2 and 4 below it
    ask = b"\3" + u(2, 1) + tablet.replica + u(8, 1) + u(8, 9) + b"\0" + b"".join(tablet.have(seq) for seq in points)
    lines = sorted([hub.place(1) + b"\1", tablet.place(6) + b"\3"])
    said = hub.replica + bytes([0x1C]) * 16 + u(8, 1) + hub.e[1] + u(8, START_MS) + u(2, 2) + b"".join(lines)
    receipt = b"\6" + u(8, 5) + u(8, 0) + said + sign(HUB, tag("limb.receipt.1") + CLINIC + said)

    newcomer = b"\3" + tablet.pub + bytes([0x31]) * 32 + bytes([0x1C]) * 16 + bytes([0x32]) * 16
    promise = b"\1" + H(tag("limb.commit.1"), newcomer)
    clinic = b"\2" + ROOT_PUB + hub.pub + b"\0" + bytes([0x33]) * 16
    talk = promise + clinic + newcomer
    digits = f"{int.from_bytes(H(tag('limb.compare.1'), talk)[:8], 'big') % 1000000:06d}"
    welcome = b"\4" + u(2, 1) + u(4, 1) + bytes([0x34]) * 32 + bytes([0x35]) * 80
    welcome += sign(HUB, tag("limb.welcome.1") + H(talk) + welcome)
    named = {
        "hello": hello,
        "hello_introduced": hello + tablet.run(1, 1),
        "same_different": same,
        "ask": ask,
        "runs": b"\4\1" + tablet.run(2, 4),
        "take": b"\5\1" + tablet.run(2, 4) + tablet.run(5, 6),
        "receipt": receipt,
        "digest": digest(hub, tablet),
        "enrol_promise": promise,
        "enrol_clinic": clinic,
        "enrol_newcomer": newcomer,
        "enrol_welcome": welcome,
    }
    out = {name: value.hex() for name, value in named.items()}
    out["enrol_digits"] = digits
    return out


def main():
    # RFC 8032, section 7.1, test 2.
    seed = bytes.fromhex("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
    if sign(seed, b"\x72").hex()[:32] != "92a009a9f0d4cab8720e820b5f642540":
        print("the signature scheme differs from RFC 8032")
        return 1
    made = cases()
    if "--write" in sys.argv:
        source = "Made by tests/outside/python/exchange_bytes.py from schemas/ledger-format.md. Hexadecimal, but for the digits."
        KEPT.write_text(json.dumps({"source": source, **made}, indent=1) + "\n")
        return 0
    kept = json.loads(KEPT.read_text())
    wrong = [name for name, value in made.items() if kept.get(name) != value]
    for name in wrong:
        print(f"{name} differs from the stored one")
    print(f"{len(made) - len(wrong)} passed, {len(wrong)} failed")
    return 1 if wrong or len(kept) != len(made) + 1 else 0


if __name__ == "__main__":
    sys.exit(main())
