"""Makes public/fonts/ from the complete IBM Plex Sans files (package @ibm/plex-sans 1.1.0, OFL 1.1).

Run once by hand when the set of characters changes: python3 .ci/make-fonts.py DIR_WITH_WOFF2 public/fonts
Needs Debian's python3-fonttools and python3-brotli. The subset is renamed, as the licence asks of modified versions.
"""

import sys
from pathlib import Path

from fontTools import subset
from fontTools.ttLib import TTFont

SOURCE, TARGET = Path(sys.argv[1]), Path(sys.argv[2])
FAMILY = "Underlid Sans"
WEIGHTS = {400: "Regular", 500: "Medium", 600: "SemiBold"}
# Latin, Latin-1, Latin Extended-A and -B, Greek, Cyrillic, punctuation, super- and subscripts, currency, arrows, maths.
RANGES = [(0x20, 0x7E), (0xA0, 0x24F), (0x2B0, 0x2FF), (0x300, 0x32F), (0x370, 0x3FF), (0x400, 0x4FF), (0x1E00, 0x1EFF), (0x2000, 0x206F),
          (0x2070, 0x209F), (0x20A0, 0x20BF), (0x2100, 0x214F), (0x2190, 0x21FF), (0x2200, 0x22FF), (0x25A0, 0x25FF), (0x2713, 0x2718)]
CHARACTERS = [code for first, last in RANGES for code in range(first, last + 1)]


def renamed(font: TTFont, style: str) -> None:
    for record in list(font["name"].names):
        if record.nameID in (1, 16):
            record.string = FAMILY
        elif record.nameID in (2, 17):
            record.string = style
        elif record.nameID in (3, 4):
            record.string = f"{FAMILY} {style}"
        elif record.nameID == 6:
            record.string = f"UnderlidSans-{style}"


TARGET.mkdir(parents=True, exist_ok=True)
for weight, style in WEIGHTS.items():
    for flavor, ending in (("woff2", "woff2"), (None, "ttf")):
        options = subset.Options(layout_features=["kern", "liga", "tnum", "mark", "mkmk", "ccmp"], name_IDs=["*"], notdef_outline=True)
        options.flavor = flavor
        font = subset.load_font(str(SOURCE / f"IBMPlexSans-{style}.woff2"), options)
        cutter = subset.Subsetter(options)
        cutter.populate(unicodes=CHARACTERS)
        cutter.subset(font)
        renamed(font, style)
        font.flavor = flavor
        path = TARGET / f"underlid-sans-{weight}.{ending}"
        font.save(path)
        print(path, path.stat().st_size, "bytes")
