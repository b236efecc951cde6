"""Writes the drawings of the reader's test by feature, and the pictures they are expected to look like.

    python3 pictures.py

Needs Python 3 with Pillow, rsvg-convert of librsvg, and chromium. Expected pictures are librsvg's; chromium's where
reasons.py says that librsvg is wrong; and where both are, librsvg's picture of a plain drawing that stands beside and says
the same in other words. Whatever a renderer draws otherwise than expected has to stand in reasons.py, and nothing else may.
All pictures are drawn four times as large each way and averaged, so that pixels by edges are nearly exact.
"""

import io
import os
import re
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from PIL import Image, ImageChops, ImageFilter

from drawings import DRAWINGS, PLAIN
from reasons import REASONS

WIDTH = 120
FINER = 4
# As PixelVerdict has them.
ROUNDING = 2
SAMPLING = 40
MOST_SAMPLED = 0.04
# A feature decides at least this share of the picture.
DECIDED = 0.1
FOLDER = Path(__file__).parent.parent / "resources/inkstrata/artwork/features"
FEATURE = re.compile(r"\[\[(.*?)\|\|(.*?)\]\]", re.DOTALL)


def without(svg):
    """The drawing without its feature."""
    if FEATURE.search(svg):
        return FEATURE.sub(r"\2", svg)
    return svg[: svg.index("\n")] + "</svg>"


def rsvg(svg):
    done = subprocess.run(["rsvg-convert", "-w", str(FINER * WIDTH), "-b", "white"], input=svg.encode(), capture_output=True)
    if done.returncode:
        return None
    return Image.open(io.BytesIO(done.stdout)).convert("RGB").reduce(FINER)


def chromium(drawings, folder):
    across = 10
    images = []
    for page in range(0, len(drawings), 100):
        part = drawings[page : page + 100]
        for i, svg in enumerate(part):
            (folder / f"c{i}.svg").write_text(svg)
        cells = "".join(f'<img src="c{i}.svg" width="{WIDTH}" height="{WIDTH}">' for i in range(len(part)))
        (folder / "page.html").write_text(
            f"<style>body{{margin:0;width:{across * WIDTH}px;line-height:0;background:#fff}}</style>{cells}"
        )
        subprocess.run(
            ["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", f"--force-device-scale-factor={FINER}",
             "--force-color-profile=srgb",
             f"--window-size={across * WIDTH},{10 * WIDTH}", f"--screenshot={folder}/page.png", f"file://{folder}/page.html"],
            check=True, capture_output=True)
        sheet = Image.open(folder / "page.png").convert("RGB").reduce(FINER)
        for i in range(len(part)):
            x, y = i % across * WIDTH, i // across * WIDTH
            images.append(sheet.crop((x, y, x + WIDTH, y + WIDTH)))
    return images


def greatest(image):
    """The greatest of the three channels, as one."""
    one, two, three = image.split()
    return ImageChops.lighter(one, ImageChops.lighter(two, three))


def count(channel, more_than):
    return sum(channel.histogram()[more_than + 1 :])


def same(picture, expected):
    """The rule of PixelVerdict."""
    if picture is None or picture.size != expected.size:
        return False
    # Filters leave the border as it is: it is repeated around the picture first.
    def around(kind):
        wide = Image.new("RGB", (WIDTH + 2, WIDTH + 2))
        for x in range(3):
            for y in range(3):
                wide.paste(expected, (x, y))
        big = Image.new("RGB", (WIDTH + 4, WIDTH + 4), (255, 255, 255) if kind is ImageFilter.MinFilter else (0, 0, 0))
        big.paste(expected, (2, 2))
        return big.filter(kind(3)).crop((2, 2, WIDTH + 2, WIDTH + 2))

    least, most = around(ImageFilter.MinFilter), around(ImageFilter.MaxFilter)
    beyond = ImageChops.lighter(ImageChops.subtract(least, picture), ImageChops.subtract(picture, most))
    if count(greatest(beyond), ROUNDING):
        return False
    edges = greatest(ImageChops.subtract(most, least)).point(lambda range: 255 if range > ROUNDING else 0)
    off = greatest(ImageChops.difference(picture, expected)).point(lambda value: 255 if value > SAMPLING else 0)
    return count(ImageChops.multiply(edges, off), 0) <= MOST_SAMPLED * count(edges, 0)


def reason(key, renderer):
    for renderers, names, section, sentence in REASONS:
        if renderer in renderers.split() and any(key == name or (name.endswith("*") and key.startswith(name[:-1])) for name in names.split()):
            return section, sentence
    return None


def main():
    keys = sorted(DRAWINGS)
    svgs = {key: FEATURE.sub(r"\1", DRAWINGS[key]) for key in keys}
    drawn = [key for key in keys if not key.startswith("text/")]
    all = [svgs[key] for key in drawn] + [without(DRAWINGS[key]) for key in drawn] + list(PLAIN.values())
    with ThreadPoolExecutor(2) as pool:
        by_librsvg = list(pool.map(rsvg, all))
    with tempfile.TemporaryDirectory() as folder:
        by_chromium = chromium(all[: 2 * len(drawn)], Path(folder))
    plain = dict(zip(PLAIN, by_librsvg[2 * len(drawn) :]))
    faults = []
    rows = []
    expected = {}
    for i, key in enumerate(drawn):
        both = {"librsvg": by_librsvg, "chromium": by_chromium}
        better = "chromium" if reason(key, "librsvg") else "librsvg"
        expected[key] = plain.get(key) or both[better][i]
        bare = both[better][len(drawn) + i] or Image.new("RGB", (WIDTH, WIDTH), (255, 255, 255))
        share = count(greatest(ImageChops.difference(bare, expected[key])), 32) / WIDTH**2
        if share < DECIDED:
            faults.append(f"{key} decides {share:.3f} of its picture")
        for renderer, pictures in both.items():
            listed = reason(key, renderer)
            if same(pictures[i], expected[key]) == bool(listed):
                faults.append(f"{key} {'does not differ' if listed else 'differs'} in {renderer}")
                if os.environ.get("LOOK") and pictures[i]:
                    pair = Image.new("RGB", (2 * WIDTH + 4, WIDTH))
                    pair.paste(pictures[i], (0, 0))
                    pair.paste(expected[key], (WIDTH + 4, 0))
                    pair.save(f"{os.environ['LOOK']}/{key.replace('/', '_')}.{renderer}.png")
    for folder in sorted({key.split("/")[0] for key in keys}):
        (FOLDER / folder).mkdir(parents=True, exist_ok=True)
        for old in (FOLDER / folder).iterdir():
            old.unlink()
    for key in keys:
        (FOLDER / f"{key}.svg").write_text(svgs[key])
        if key in PLAIN:
            (FOLDER / f"{key}.plain.svg").write_text(PLAIN[key])
        if key in expected:
            image = expected[key]
            colours = image.getcolors(256)
            if colours:
                image = image.convert("P", palette=Image.Palette.ADAPTIVE, colors=len(colours))
            image.save(FOLDER / f"{key}.png", optimize=True)
            if Image.open(FOLDER / f"{key}.png").convert("RGB").tobytes() != expected[key].tobytes():
                faults.append(f"{key} loses colours")
    for key in keys:
        found = {}
        for renderer in ("jsvg", "librsvg", "chromium"):
            why = reason(key, renderer)
            if why:
                found.setdefault(why, []).append(renderer)
        rows += ["\t".join([key, " ".join(renderers), *why]) for why, renderers in found.items()]
    (FOLDER / "differ.tsv").write_text("\n".join(["feature\tdrawn otherwise by\tsection\tsentence", *rows]) + "\n")
    print("\n".join(faults))
    print(len(keys), "drawings,", len(faults), "faults")
    return bool(faults)


if __name__ == "__main__":
    sys.exit(main())
