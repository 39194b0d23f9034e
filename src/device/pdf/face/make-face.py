"""Makes the two printing faces from the published variable face: one static weight each, small enough to be carried.

    python3 -m venv .face && .face/bin/pip install fonttools==4.66.1 brotli
    .face/bin/python src/device/pdf/face/make-face.py

A PDF takes TrueType outlines only, and no variable ones. Both published files (latin, latin-ext) of
@fontsource-variable/atkinson-hyperlegible-next are set to one weight and joined; signs of figures they lack are drawn
here with the same stroke. Modified as the SIL Open Font License allows, so the face carries a name of its own; the
licence lies in public/fonts/OFL.txt.
"""
import math
import os

from fontTools.merge import Merger
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont
from fontTools.varLib.instancer import instantiateVariableFont

HERE = os.path.dirname(os.path.abspath(__file__))
PUBLISHED = "node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-%s-wght-normal.woff2"
NAME = "Leadlamp Sheet"
WEIGHTS = {"regular": (400, 80), "bold": (700, 118)}  # weight, stroke of its signs in units


def band(pen, points, width):
    """One open line as a filled band; corners mitred by the averaged normal."""
    half = width / 2
    left, right = [], []
    for i, (x, y) in enumerate(points):
        near = [p for p in (i - 1, i) if 0 <= p < len(points) - 1]
        normals = []
        for j in near:
            dx, dy = points[j + 1][0] - points[j][0], points[j + 1][1] - points[j][1]
            length = math.hypot(dx, dy)
            normals.append((-dy / length, dx / length))
        nx, ny = sum(n[0] for n in normals) / len(normals), sum(n[1] for n in normals) / len(normals)
        scale = half / (nx * nx + ny * ny)
        left.append((x + nx * scale, y + ny * scale))
        right.append((x - nx * scale, y - ny * scale))
    outline = left + right[::-1]
    pen.moveTo(tuple(map(round, outline[0])))
    for point in outline[1:]:
        pen.lineTo(tuple(map(round, point)))
    pen.closePath()


def arc(cx, cy, rx, ry, start, end, steps=28):
    turn = (end - start) / steps
    return [(cx + rx * math.cos(math.radians(start + turn * i)), cy + ry * math.sin(math.radians(start + turn * i))) for i in range(steps + 1)]


def signs(stroke):
    """Signs by code point: width and the lines they are drawn with, in units of 1000 to the em."""
    low = stroke / 2
    return {
        0x2264: (600, [[(520, 560), (90, 355), (520, 150)], [(80, low), (520, low)]]),
        0x2265: (600, [[(80, 560), (510, 355), (80, 150)], [(80, low), (520, low)]]),
        0x2260: (620, [[(62, 346), (558, 346)], [(62, 160), (558, 160)], [(180, 10), (440, 500)]]),
        0x2248: (620, [[(62, 320), (150, 380), (230, 392), (390, 330), (470, 342), (558, 402)], [(62, 130), (150, 190), (230, 202), (390, 140), (470, 152), (558, 212)]]),
        0x2192: (760, [[(60, 248), (690, 248)], [(470, 470), (695, 248), (470, 26)]]),
        0x2190: (760, [[(700, 248), (70, 248)], [(290, 470), (65, 248), (290, 26)]]),
        0x2032: (230, [[(140, 680), (90, 460)]]),
        0x2033: (380, [[(140, 680), (90, 460)], [(290, 680), (240, 460)]]),
        0x2713: (640, [[(70, 270), (250, 70), (580, 560)]]),
        0x2300: (740, [arc(370, 334, 270, 270, 0, 360), [(70, 20), (670, 648)]]),
        0x03A9: (760, [[(80, low), (270, low), (270, 90)] + arc(380, 380, 255, 250, 244, -64) + [(490, 90), (490, low), (680, low)]]),
        0xFFFD: (640, [[(80, 40), (560, 40), (560, 640), (80, 640), (80, 0)], [(170, 550), (470, 130)], [(470, 550), (170, 130)]]),
    }




def add(font, code, width, pen):
    name = "uni%04X" % code
    font.setGlyphOrder(font.getGlyphOrder() + [name])
    glyph = pen.glyph()
    font["glyf"][name] = glyph
    font["hmtx"][name] = (width, 0)
    glyph.recalcBounds(font["glyf"])
    font["hmtx"][name] = (width, getattr(glyph, "xMin", 0))
    named(font, code, name)


def named(font, code, name):
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[code] = name


def made(style, weight, stroke):
    parts = []
    for subset in ("latin", "latin-ext"):
        font = instantiateVariableFont(TTFont(PUBLISHED % subset), {"wght": weight})
        # Figures of one width: columns of them are what is printed most.
        for code in range(ord("0"), ord("9") + 1):
            if code in font.getBestCmap():
                named(font, code, font.getBestCmap()[code] + ".tf")
        for table in ("GSUB", "GPOS", "GDEF", "STAT", "prep", "gasp", "HVAR", "MVAR"):
            if table in font:
                del font[table]
        font.flavor = None
        path = os.path.join(HERE, "part-%s.ttf" % subset)
        font.save(path)
        parts.append(path)
    font = Merger().merge(parts)
    for path in parts:
        os.remove(path)
    for code, (width, lines) in signs(stroke).items():
        pen = TTGlyphPen(None)
        for line in lines:
            band(pen, line, stroke)
        add(font, code, width, pen)
    # Micro: the u with a stem going down.
    best, glyphs = font.getBestCmap(), font.getGlyphSet()
    u = best[ord("u")]
    pen = TTGlyphPen(glyphs)
    glyphs[u].draw(pen)
    band(pen, [(70 + stroke / 2, 300), (70 + stroke / 2, -162)], stroke)
    add(font, 0x00B5, font["hmtx"][u][0], pen)
    names = font["name"]
    keep = {0: names.getDebugName(0), 1: NAME, 2: style.capitalize(), 3: "%s %s" % (NAME, style), 4: "%s %s" % (NAME, style.capitalize()), 5: "Version 1.0", 6: "LeadlampSheet-%s" % style.capitalize(), 13: "SIL Open Font License 1.1", 14: "https://openfontlicense.org"}
    names.names = []
    for key, text in keep.items():
        names.setName(text, key, 3, 1, 0x409)
    font["OS/2"].fsSelection = 0x20 if style == "bold" else 0x40
    font["head"].macStyle = 1 if style == "bold" else 0
    font["OS/2"].usWeightClass = weight
    font["post"].formatType = 3.0
    font["head"].modified = font["head"].created
    font.recalcTimestamp = False
    path = os.path.join(HERE, "leadlamp-sheet-%s.ttf" % style)
    font.save(path)
    print(path, os.path.getsize(path), len(font.getBestCmap()))


for style, (weight, stroke) in WEIGHTS.items():
    made(style, weight, stroke)
