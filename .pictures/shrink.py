"""Writes a page drawn by pdftoppm (PPM, standard input) as a PNG of few colours (standard output).

Cards have a handful of inks, so a palette of them and of the steps between them shows a page as
well as 16 million colours do, in a third of the bytes.
"""
import collections
import struct
import sys
import zlib

LEVELS = 8  # of each of red, green and blue
COLOURS = 64  # in the palette, at most


def level(value):
    return (value * (LEVELS - 1) + 127) // 255


def chunk(kind, body):
    return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))


def distance(one, other):
    return sum((a - b) ** 2 for a, b in zip(one, other))


def main():
    magic, size, most, pixels = sys.stdin.buffer.read().split(b"\n", 3)
    if magic != b"P6" or most != b"255":
        sys.exit("shrink.py: this is no picture of pdftoppm")
    width, height = map(int, size.split())
    if len(pixels) != 3 * width * height:
        sys.exit("shrink.py: the picture is cut off")
    steps = bytes(level(value) for value in range(256))
    stepped = pixels.translate(steps)
    seen = [tuple(stepped[i:i + 3]) for i in range(0, len(stepped), 3)]
    counts = collections.Counter(seen)
    palette = sorted(counts, key=lambda colour: (-counts[colour], colour))[:COLOURS]
    index = {colour: min(range(len(palette)), key=lambda i: (distance(colour, palette[i]), i))
             for colour in counts}
    rows = b"".join(b"\0" + bytes(index[colour] for colour in seen[y * width:(y + 1) * width])
                    for y in range(height))
    colours = bytes(part * 255 // (LEVELS - 1) for colour in palette for part in colour)
    out = sys.stdout.buffer
    out.write(b"\x89PNG\r\n\x1a\n")
    out.write(chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 3, 0, 0, 0)))
    out.write(chunk(b"PLTE", colours))
    out.write(chunk(b"IDAT", zlib.compress(rows, 9)))
    out.write(chunk(b"IEND", b""))


main()
