#!/usr/bin/env python3
"""What the fuzzing programs start from, in files that people can read.

keep.py unpack FILE FOLDER        each line of FILE becomes one input in FOLDER
keep.py pack FOLDER FILE [BYTES]  the other way, small inputs first, until FILE holds BYTES
keep.py words FILE                method, member, choice and item names of schemas/ and the catalogue, as a dictionary of libFuzzer

One input a line: printable ASCII as it is, a backslash twice, every other byte as \\xHH.
"""
import hashlib
import json
import pathlib
import re
import sys

TOP = pathlib.Path(__file__).resolve().parents[2]


def to_line(data):
    return "".join("\\\\" if b == 0x5C else chr(b) if 0x20 <= b < 0x7F else f"\\x{b:02x}" for b in data)


def from_line(line):
    return re.sub(rb"\\(?:\\|x([0-9a-f]{2}))", lambda m: bytes([int(m[1], 16)]) if m[1] else b"\\", line.encode("ascii"))


def unpack(file, folder):
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    for line in pathlib.Path(file).read_text("ascii").splitlines():
        data = from_line(line)
        (folder / hashlib.sha1(data).hexdigest()).write_bytes(data)


def pack(folder, file, limit="300000"):
    lines, size = set(), 0
    for path in sorted(pathlib.Path(folder).iterdir(), key=lambda p: (p.stat().st_size, p.name)):
        line = to_line(path.read_bytes())
        if size + len(line) + 1 > int(limit):
            break
        if line not in lines:
            lines.add(line)
            size += len(line) + 1
    pathlib.Path(file).write_text("".join(line + "\n" for line in sorted(lines)), "ascii")
    print(f"{file}: {len(lines)} inputs, {size} bytes")


def words_of(node, found):
    if isinstance(node, dict):
        for key, value in node.items():
            if key == "properties":
                found.update(value)
            elif key in ("const", "enum"):
                found.update(v for v in (value if isinstance(value, list) else [value]) if isinstance(v, str))
            words_of(value, found)
    elif isinstance(node, list):
        for value in node:
            words_of(value, found)


def words(file):
    found = {"jsonrpc", "2.0", "id", "method", "params", "result", "error"}
    for path in sorted((TOP / "schemas").rglob("*.json")):
        node = json.loads(path.read_text("utf-8"))
        if path.name == "openrpc.json":
            found.update(method["name"] for method in node["methods"])
            node = {"methods": [{k: v for k, v in m.items() if k != "examples"} for m in node["methods"]], "components": node.get("components")}
        words_of(node, found)
    for path in sorted((TOP / "core/reference/data/items").glob("*.json")):
        found.update(re.findall(r'"item": ?"([a-z0-9_.]+)"', path.read_text("utf-8")))
        found.update(re.findall(r'"id": ?"([a-z0-9_.]+)"', path.read_text("utf-8")))
    found.update("@" + name for name in ("exam", "person", "place", "revision", "entry", "finding", "alert", "plan_item", "second", "second_seen",
                                         "not_done", "statement", "passphrase", "code", "cursor"))
    lines = [f'"{word}"' for word in ("Content-Length: ", "Content-Type: application/json", "Transfer-Encoding: chunked", "Upgrade: websocket",
                                      "Connection: Upgrade", "POST /rpc HTTP/1.1", "Authorization: Bearer ", "Host: 127.0.0.1:40211", "Expect: 100-continue",
                                      "\\x0d\\x0a", "\\x0d\\x0a\\x0d\\x0a", "\\xff|", "\\x81\\x80\\x00\\x00\\x00\\x00", "\\x88\\x80\\x00\\x00\\x00\\x00",
                                      "\\xed\\xa0\\x80", "\\xf4\\x8f\\xbf\\xbf", "\\xef\\xbb\\xbf", "1e400", "9007199254740993", "\\\\ud800", "\\\\u0000")]
    lines += [f'"\\"{word}\\""' for word in sorted(found) if re.fullmatch(r"[ -!#-\[\]-~]{1,60}", word)]
    pathlib.Path(file).write_text("\n".join(lines) + "\n", "ascii")
    print(f"{file}: {len(lines)} words")


if __name__ == "__main__":
    {"unpack": unpack, "pack": pack, "words": words}[sys.argv[1]](*sys.argv[2:])
