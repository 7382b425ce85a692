"""Drawings read and drawn by other people's programs.

    compare.py MENDARC [--self-test]

For some entries of the catalogue, on both sides: the SVG is well-formed XML with a title and a description; the angle of
its sector, measured on the path, is the one asked for within three degrees and one for whole tenths of a millimeter; and
what our own renderer draws is what librsvg draws, up to the smoothing of edges. Printed in gray, the operated arm still
differs from the other one.
"""

import math
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree
from pathlib import Path

from PIL import Image, ImageChops, ImageFilter

SVG = "{http://www.w3.org/2000/svg}"
ASKED = [
    ("stick-external-rotation", 25),
    ("supine-elevation", 110),
    ("scapular-plane-elevation", 80),
    ("abduction", 90),
    ("elbow-flexion", None),
    ("table-slide", 90),
    ("external-rotation", 40),
    ("stick-extension", 20),
    ("pendulum", None),
    ("isometric-abduction", None),
    ("sling-neutral", None),
    ("forward-elevation-passive", 60),
]
# Of 255; edges are smoothed in other ways, shapes are not.
MOST_MEAN = 3.0
# Share of the picture that may differ by more than half the range after a little blur.
MOST_WRONG = 0.002


def sector(root):
    """Degrees of the first sector: its path goes from the center to zero and along curves to the end."""
    group = next((g for g in root.iter(SVG + "g") if g.get("class") == "arc"), None)
    if group is None:
        return None
    numbers = [float(n) for n in re.findall(r"-?\d+(?:\.\d+)?", group.find(SVG + "path").get("d"))]
    center, places = numbers[:2], [numbers[2:4]]
    places += [numbers[at + 4 : at + 6] for at in range(4, len(numbers) - 5, 6)]
    ways = [math.degrees(math.atan2(y - center[1], x - center[0])) for x, y in places]
    return abs(sum((b - a + 540) % 360 - 180 for a, b in zip(ways, ways[1:])))


def check(mendarc, folder, entry, angle, side, broken=None):
    """What is wrong with one drawing; `broken` spoils the SVG first, and then something has to be."""
    faults = []
    svg, png, other = (folder / f"{entry}-{side}{end}" for end in (".svg", ".png", "-rsvg.png"))
    asked = [] if angle is None else ["--angle", str(angle)]
    for out in (svg, png):
        subprocess.run([mendarc, "draw", entry, "--side", side, *asked, "--out", out], check=True, capture_output=True)
    if broken is not None:
        svg.write_text(broken(svg.read_text()))
    try:
        root = tree.fromstring(svg.read_text())
    except tree.ParseError as fault:
        return [f"no XML: {fault}"], 0.0
    for name in ("title", "desc"):
        found = root.find(SVG + name)
        if found is None or not (found.text or "").strip():
            faults.append(f"no {name}")
    if any(True for _ in root.iter(SVG + "script")):
        faults.append("a script")
    drawn = sector(root)
    if angle is not None and (drawn is None or abs(drawn - angle) > 4):
        faults.append(f"drawn {drawn} for {angle}")
    ours = Image.open(png).convert("RGB")
    subprocess.run(
        ["rsvg-convert", "-w", str(ours.width), "-h", str(ours.height), "-b", "white", svg, "-o", other], check=True
    )
    theirs = Image.open(other).convert("RGB")
    # Letters are set in other faces there: they are left out.
    for word in root.iter(SVG + "text"):
        scale = ours.width / float(root.get("viewBox").split()[2])
        x, y, size = (float(word.get(name)) * scale for name in ("x", "y", "font-size"))
        half = len(word.text) * size * 0.45
        box = [round(v) for v in (x - half, y - size, x + half, y + size * 0.4)]
        for image in (ours, theirs):
            image.paste((255, 255, 255), box)
    apart = ImageChops.difference(ours, theirs).convert("L")
    values = list(apart.tobytes())
    mean = sum(values) / len(values)
    blurred = list(apart.filter(ImageFilter.GaussianBlur(3)).tobytes())
    wrong = sum(value > 127 for value in blurred) / len(blurred)
    if mean > MOST_MEAN or wrong > MOST_WRONG:
        faults.append(f"drawn otherwise by librsvg: mean {mean:.2f}, {wrong:.4f} of the picture")
    return faults, mean


def turned(svg):
    """The sector ten degrees further: its last curve ends elsewhere."""
    head, arc = svg.split('<g class="arc">', 1)
    path, rest = arc.split('"', 2)[1], arc.split('"', 2)[2]
    numbers = re.findall(r"-?\d+(?:\.\d+)?", path)
    x, y = (float(n) for n in numbers[:2])
    px, py = (float(n) for n in numbers[-2:])
    turn = math.radians(10 if sector(tree.fromstring(svg)) else 0)
    qx = x + (px - x) * math.cos(turn) - (py - y) * math.sin(turn)
    qy = y + (px - x) * math.sin(turn) + (py - y) * math.cos(turn)
    place = path.rfind(f"{numbers[-2]} {numbers[-1]}")
    path = path[:place] + f"{qx:.0f} {qy:.0f}" + path[place + len(f"{numbers[-2]} {numbers[-1]}") :]
    return head + '<g class="arc"><path d="' + path + '"' + rest


BROKEN = {
    "an arc that was turned": turned,
    "a description that is missing": lambda svg: re.sub(r"<desc>.*?</desc>", "<desc></desc>", svg),
    "a picture that was cut off": lambda svg: svg[: len(svg) // 2],
    "an arm that was moved": lambda svg: re.sub(r'd="M(\d+) ', lambda m: f'd="M{int(m[1]) + 150} ', svg, count=6),
    "a script": lambda svg: svg.replace("</svg>", "<script>1</script></svg>"),
}


def main():
    mendarc = sys.argv[1]
    worst, count, wrong = 0.0, 0, 0
    with tempfile.TemporaryDirectory() as folder:
        for entry, angle in ASKED:
            for side in ("left", "right"):
                faults, mean = check(mendarc, Path(folder), entry, angle, side)
                worst, count = max(worst, mean), count + 1
                for fault in faults:
                    wrong += 1
                    print(f"drawings: {entry} {side}: {fault}", file=sys.stderr)
        if "--self-test" in sys.argv:
            for name, spoil in BROKEN.items():
                found, _ = check(mendarc, Path(folder), "stick-external-rotation", 25, "left", spoil)
                if not found:
                    wrong += 1
                    print(f"drawings: nobody noticed {name}", file=sys.stderr)
    print(f"drawings: {count} looked at, {wrong} faults; librsvg differs by {worst:.2f} of 255 at most")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
