#!/usr/bin/python3
# SPDX-License-Identifier: Apache-2.0
"""Draws the plan of the example garage as a builder might have, prints it to an image, and ages it as a scanner would.

The garage is invented. Run from anywhere: make_plan_scan.py OUT.jpg
Prints where two corners of the room fell in the picture, so that the example can be set to scale from them.
"""
import math
import sys

import numpy
from PIL import Image, ImageDraw, ImageFilter, ImageFont

DPI = 150
SCALE = 50  # 1:50
PIXELS_PER_METRE = DPI / 0.0254 / SCALE
PAPER = (int(0.210 * DPI / 0.0254), int(0.297 * DPI / 0.0254))  # A4 upright
ORIGIN = (250, 1330)  # pixel of the room's corner (0, 0)
SUPERSAMPLE = 2
TURN_DEGREES = 1.4
INK = 40

FLOOR = [(0, 0), (6.4, 0), (6.4, 4.2), (5.2, 4.2), (5.2, 7.4), (0, 7.4)]
WALL = 0.14


def pixel(x, y):
    return (ORIGIN[0] + x * PIXELS_PER_METRE, ORIGIN[1] - y * PIXELS_PER_METRE)


class Sheet:
    def __init__(self):
        size = (PAPER[0] * SUPERSAMPLE, PAPER[1] * SUPERSAMPLE)
        self.image = Image.new("L", size, 255)
        self.pen = ImageDraw.Draw(self.image)

    def at(self, x, y):
        px, py = pixel(x, y)
        return (px * SUPERSAMPLE, py * SUPERSAMPLE)

    def line(self, points, width=2, fill=INK):
        self.pen.line([self.at(*p) for p in points], fill=fill, width=width * SUPERSAMPLE)

    def dashed(self, a, b, width=2, dash=0.12):
        length = math.dist(a, b)
        steps = max(1, int(length / dash))
        for i in range(0, steps, 2):
            t0, t1 = i / steps, min(1, (i + 1) / steps)
            point = lambda t: (a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]))
            self.line([point(t0), point(t1)], width)

    def text(self, x, y, words, height=0.16, turned=False, anchor="mm"):
        font = ImageFont.truetype("DejaVuSans.ttf", int(height * PIXELS_PER_METRE * SUPERSAMPLE))
        if not turned:
            self.pen.text(self.at(x, y), words, font=font, fill=INK, anchor=anchor)
            return
        box = self.pen.textbbox((0, 0), words, font=font)
        tile = Image.new("L", (box[2] + 8, box[3] + 8), 255)
        ImageDraw.Draw(tile).text((4, 4), words, font=font, fill=INK)
        tile = tile.rotate(90, expand=True)
        px, py = self.at(x, y)
        self.image.paste(tile, (int(px - tile.width / 2), int(py - tile.height / 2)))

    def gap(self, a, b):
        """Opens a wall between two points of its inner face; the wall lies to the right of a -> b."""
        length = math.dist(a, b)
        normal = ((b[1] - a[1]) / length * WALL, -(b[0] - a[0]) / length * WALL)
        corners = [a, b, (b[0] + normal[0], b[1] + normal[1]), (a[0] + normal[0], a[1] + normal[1])]
        self.pen.polygon([self.at(*p) for p in corners], fill=255)
        for end, far in ((a, corners[3]), (b, corners[2])):
            self.line([end, far], 3)
        return normal


def outward(points, distance):
    """Offset of a counter-clockwise outline with square corners."""
    result = []
    count = len(points)
    for i in range(count):
        (x0, y0), (x1, y1), (x2, y2) = points[i - 1], points[i], points[(i + 1) % count]
        n1 = ((y1 - y0), -(x1 - x0))
        n2 = ((y2 - y1), -(x2 - x1))
        n1 = tuple(c / math.hypot(*n1) for c in n1)
        n2 = tuple(c / math.hypot(*n2) for c in n2)
        result.append((x1 + distance * (n1[0] + n2[0]), y1 + distance * (n1[1] + n2[1])))
    return result


def dimension(sheet, a, b, offset, turned=False):
    length = math.dist(a, b)
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    nx, ny = uy * offset, -ux * offset
    p, q = (a[0] + nx, a[1] + ny), (b[0] + nx, b[1] + ny)
    sheet.line([p, q], 1)
    for end, base in ((p, a), (q, b)):
        sheet.line([(base[0] + 0.3 * nx, base[1] + 0.3 * ny), (end[0] + 0.1 * nx, end[1] + 0.1 * ny)], 1)
        sheet.line([(end[0] - 0.07, end[1] - 0.07), (end[0] + 0.07, end[1] + 0.07)], 3)
    middle = ((p[0] + q[0]) / 2 + (-0.14 if turned else 0), (p[1] + q[1]) / 2 + (0 if turned else 0.14))
    sheet.text(*middle, f"{length:.2f}", 0.17, turned)


def draw():
    sheet = Sheet()
    outside = outward(FLOOR, WALL)
    sheet.pen.polygon([sheet.at(*p) for p in outside], fill=120)
    sheet.pen.polygon([sheet.at(*p) for p in FLOOR], fill=255)
    sheet.line(outside + outside[:1], 3)
    sheet.line(FLOOR + FLOOR[:1], 3)

    # Sectional door in the lower wall, with its tracks.
    sheet.gap((1.2, 0), (5.2, 0))
    sheet.line([(1.2, -0.07), (5.2, -0.07)], 4)
    for x in (1.2, 5.2):
        sheet.dashed((x, 0), (x, 2.7))
    sheet.dashed((1.2, 2.7), (5.2, 2.7))
    sheet.text(3.2, 1.35, "sectional door 4.00 x 2.20, tracks over", 0.15)

    # Side door to the yard, hinged, opening inward.
    sheet.gap((6.4, 1.0), (6.4, 1.9))
    sheet.line([(6.4, 1.0), (5.5, 1.0)], 3)
    arc = [(6.4 - 0.9 * math.cos(t), 1.0 + 0.9 * math.sin(t)) for t in numpy.linspace(0, math.pi / 2, 24)]
    sheet.line(arc, 1)
    sheet.text(5.72, 2.05, "yard", 0.14)

    # Window.
    sheet.gap((0, 2.4), (0, 1.4))
    sheet.line([(-0.07, 2.4), (-0.07, 1.4)], 2)

    # Where the ceiling begins to slope.
    sheet.dashed((1.0, 0), (1.0, 7.4), 1)
    sheet.text(0.5, 6.75, "slope to 2.20", 0.11)
    sheet.text(3.3, 3.55, "GARAGE", 0.3)
    sheet.text(3.3, 3.15, "ceiling 2.85", 0.17)

    dimension(sheet, (0, 0), (6.4, 0), 0.75)
    dimension(sheet, (0, 7.4), (0, 0), 0.75, turned=True)
    dimension(sheet, (6.4, 0), (6.4, 4.2), 0.6, turned=True)
    dimension(sheet, (5.2, 7.4), (0, 7.4), 0.55)
    dimension(sheet, (5.2, 4.2), (5.2, 7.4), 0.6, turned=True)

    # Scale bar, 0 to 5 m.
    for i in range(5):
        corners = [(i, -1.55), (i + 1, -1.55), (i + 1, -1.45), (i, -1.45)]
        sheet.pen.polygon([sheet.at(*p) for p in corners], fill=INK if i % 2 == 0 else 255, outline=INK)
        sheet.text(i, -1.7, str(i), 0.14)
    sheet.text(5.2, -1.7, "5 m", 0.14)
    sheet.text(0, -2.05, "ORCHARD ROW, PLOT 7.  GARAGE, GROUND FLOOR.  1:50 on A4", 0.17, anchor="lm")
    sheet.text(0, -2.3, "An invented building: for demonstration only.", 0.14, anchor="lm")
    return sheet.image


def age(image):
    """Turns, blurs, shades and speckles the print as a hasty scan does. Seeded: always the same picture."""
    random = numpy.random.default_rng(7)
    image = image.rotate(TURN_DEGREES, resample=Image.BICUBIC, fillcolor=250)
    image = image.resize(PAPER, Image.LANCZOS).filter(ImageFilter.GaussianBlur(0.8))
    pixels = numpy.asarray(image).astype(float)
    rows, columns = pixels.shape
    y, x = numpy.mgrid[0:rows, 0:columns]
    shade = 1 - 0.10 * (x / columns) ** 2 - 0.06 * (1 - y / rows)
    fold = 14 * numpy.exp(-(((y - 0.52 * rows) / 5.0) ** 2))
    pixels = pixels * shade - fold + random.normal(0, 5, pixels.shape)
    specks = random.random(pixels.shape) < 0.00025
    pixels[specks] -= random.uniform(40, 150, specks.sum())
    grey = numpy.clip(pixels, 0, 255).astype(numpy.uint8)
    tint = numpy.stack([grey, (grey * 0.985).astype(numpy.uint8), (grey * 0.93).astype(numpy.uint8)], axis=-1)
    return Image.fromarray(tint)


def turned(point):
    """Where a pixel of the flat drawing falls after age()."""
    cx, cy = PAPER[0] / 2, PAPER[1] / 2
    angle = math.radians(-TURN_DEGREES)
    dx, dy = point[0] - cx, point[1] - cy
    return (cx + dx * math.cos(angle) - dy * math.sin(angle), cy + dx * math.sin(angle) + dy * math.cos(angle))


def main():
    if len(sys.argv) != 2:
        sys.exit("usage: make_plan_scan.py OUT.jpg")
    age(draw()).save(sys.argv[1], quality=82, dpi=(DPI, DPI))
    for corner in ((0, 0), (0, 7.4)):
        x, y = turned(pixel(*corner))
        print(f"corner {corner[0]:.2f} {corner[1]:.2f} at pixel {x:.2f} {y:.2f}")


if __name__ == "__main__":
    main()
