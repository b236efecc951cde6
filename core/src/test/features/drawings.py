"""The drawings of the reader's test by feature, as a table.

Each entry is (area, name, body): what stands inside <svg viewBox="0 0 60 60" width="60" height="60">. A part [[with||without]]
is the feature: the drawing has what stands before the bars, and with what stands behind them at least a tenth of the picture
has to look otherwise, which pictures.py checks. An entry without such a part is compared with an empty sheet.
"""

R, B, G, Y, O, P = "#c1121f", "#003049", "#588157", "#fdf0d5", "#f77f00", "#7b2cbf"
HEAD = '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 60 60" width="60" height="60">'
DRAWINGS = {}
PLAIN = {}


def add(area, name, body, plain=None, head=HEAD):
    key = f"{area}/{name}"
    assert key not in DRAWINGS, key
    DRAWINGS[key] = head + "\n" + body + "\n</svg>\n"
    if plain:
        PLAIN[key] = HEAD + "\n" + plain + "\n</svg>\n"


def shapes():
    a = lambda name, body, **k: add("shapes", name, body, **k)
    a("rect", f'<rect x="7" y="12" width="40" height="30" fill="{R}"/>')
    a("rect-default-corner", f'<rect width="40" height="30" fill="{R}"/>')
    a("rect-rx", f'<rect x="5" y="5" width="50" height="50" [[rx="24"||]] fill="{R}"/>')
    a("rect-ry-alone", f'<rect x="5" y="5" width="50" height="50" [[ry="24"||]] fill="{R}"/>')
    a("rect-rx-and-ry", f'<rect x="2" y="5" width="56" height="50" [[rx="28" ry="20"||]] fill="{R}"/>')
    a("rect-rx-beyond-half", f'<rect x="2" y="2" width="56" height="56" [[rx="90" ry="28"||]] fill="{R}"/>')
    a("rect-rx-percent", f'<rect x="2" y="2" width="56" height="56" [[rx="50%"||]] fill="{R}"/>')
    a("rect-rx-zero-ry", f'<rect x="2" y="2" width="56" height="56" rx="[[0||28]]" ry="28" fill="{R}"/>')
    a("rect-width-zero", f'<rect x="5" y="5" width="[[0||50]]" height="50" fill="{R}" stroke="{B}" stroke-width="6"/>')
    a("rect-negative-width", f'<rect x="50" y="5" width="[[-40||10]]" height="50" fill="{R}"/><circle cx="9" cy="9" r="8" fill="{B}"/>')
    a("circle", f'<circle cx="28" cy="31" r="20" fill="{R}"/>')
    a("circle-default-centre", f'<circle r="40" fill="{R}"/>')
    a("circle-radius-percent", f'<circle cx="30" cy="30" r="[[40%||5]]" fill="{R}"/>')
    a("circle-negative-radius", f'<circle cx="30" cy="30" r="[[-20||20]]" fill="{R}"/><rect width="20" height="20" fill="{B}"/>')
    a("ellipse", f'<ellipse cx="30" cy="30" rx="28" ry="12" fill="{R}"/>')
    a("ellipse-tall", f'<ellipse cx="30" cy="30" rx="9" ry="[[28||9]]" fill="{R}"/>')
    a("ellipse-auto-radius", f'<ellipse cx="30" cy="30" rx="22" [[||ry="5"]] fill="{R}"/>',
      plain=f'<circle cx="30" cy="30" r="22" fill="{R}"/>')
    a("line", f'<line x1="5" y1="10" x2="55" y2="50" stroke="{R}" stroke-width="10"/>')
    a("line-is-not-filled", f'<line x1="5" y1="10" x2="50" y2="50" fill="{B}" stroke="{R}" stroke-width="9"/>')
    a("line-default-ends", f'<line x2="55" y2="50" stroke="{R}" stroke-width="10"/>')
    a("polyline-fill-closes", f'<polyline points="5,5 55,15 40,55 10,40" fill="[[{R}||none]]"/>')
    a("polyline-stroke-open", f'<[[polyline||polygon]] points="6,6 54,8 54,54 6,52" fill="none" stroke="{R}" stroke-width="9"/>')
    a("polygon-stroke-closed", f'<[[polygon||polyline]] points="6,6 54,8 54,54 6,52" fill="none" stroke="{R}" stroke-width="9"/>')
    a("polygon-odd-number-left", f'<polygon points="5,5 55,10 50,55 [[20||]]" fill="{R}"/>'.replace("[[20||]]", "20"))
    a("points-without-commas", f'<polygon points="5 5 55 10-5 55" fill="{R}"/>')
    a("points-exponents", f'<polygon points="5e0,.5e1 5.5E1,10 30,55e+0" fill="{R}"/>')
    paths = {
        "lines": "M5 10L55 5L50 50L10 55Z",
        "relative-lines": "m5 10l50-5l-5 45l-40 5z",
        "horizontal-vertical": "M5 5H55V40H30V55H5Z",
        "relative-horizontal-vertical": "m5 5h50v35h-25v15h-25z",
        "lines-after-move": "M5 10 55 5 50 50 10 55Z",
        "relative-lines-after-move": "m5 10 50-5-5 45-40 5z",
        "move-after-close": "M5 5h20v20h-20zm30 30h20v20h-20z",
        "line-after-close": "M5 5h20v20h-20zl50 20v30z",
        "cubic": "M5 30C5 -10 55 70 55 30V55H5Z",
        "relative-cubic": "m5 30c0-40 50 40 50 0v25h-50z",
        "smooth-cubic": "M5 30C10 0 20 0 30 30S50 60 55 30V5H5Z",
        "relative-smooth-cubic": "m5 30c5-30 15-30 25 0s20 30 25 0v-25h-50z",
        "smooth-cubic-alone": "M5 5S55 5 55 55H5Z",
        "quadratic": "M5 5Q55 5 55 55H5Z",
        "relative-quadratic": "m5 5q50 0 50 50h-50z",
        "smooth-quadratic": "M5 30Q15 -5 30 30T55 30V55H5Z",
        "relative-smooth-quadratic": "m5 30q10-35 25 0t25 0v25h-50z",
        "smooth-quadratic-twice": "M3 30Q8 0 15 30T30 30T55 30V55H3Z",
        "smooth-quadratic-alone": "M5 5T55 30V55H5Z",
        "arc-small-down": "M10 30A20 20 0 0 0 40 40L50 5Z",
        "arc-small-up": "M10 30A20 20 0 0 1 40 40L50 5Z",
        "arc-large-down": "M15 22A20 20 0 1 0 40 22Z",
        "arc-large-up": "M15 40A20 20 0 1 1 40 40Z",
        "relative-arc": "m10 30a20 12 0 1 1 30 10z",
        "arc-turned": "M12 20A28 12 60 1 1 48 40Z",
        "arc-turned-back": "M12 20A28 12 -60 1 1 48 40Z",
        "arc-too-small": "M5 30A1 1 0 0 1 55 30Z",
        "arc-radius-zero": "M5 5A0 20 0 0 1 55 30L5 55Z",
        "arc-negative-radius": "M5 30A-25 -25 0 0 1 55 30Z",
        "arc-flags-glued": "M10 30a20 20 0 0130 10L50 5z",
        "arc-flags-glued-wholly": "M10 30a20 20 0 1120 10L50 5z",
        "several-arcs": "M5 30A12 12 0 0 1 30 30 12 12 0 0 0 55 30V5H5Z",
        "several-cubics": "M5 30C5 0 30 0 30 30 30 60 55 60 55 30V5H5Z",
        "glued-decimals": "M5.5.5L55.5.5 30.5.5 30.5 55.5.5 55.5z",
        "glued-signs": "M5-5L55 5-5 55z",
        "exponents": "M.5e1 5L5.5E1 5L30 550e-1z",
        "commas": "M5,5,55,5,30,55,Z".replace(",Z", "Z"),
        "newlines-and-tabs": "M5 5&#10;L&#9;55&#13;5 30&#10;55z",
        "error-keeps-what-was-before": "M5 5H55V40H5L60,x 30",
    }
    for name, d in paths.items():
        a("path-" + name, f'<path d="{d}" fill="{R}"/>')
    a("path-open-fill-closes", f'<path d="M5 5L55 10L30 55" fill="{R}"/>')
    a("path-starts-with-a-line", f'<path d="[[L||M]]5 5L55 10L30 55" fill="{R}"/><rect y="50" width="60" height="10" fill="{B}"/>')
    a("css-geometry-rect", f'<rect style="[[x:10px;y:10px;width:45px;height:45px;||]]" fill="{R}"/>')
    a("css-geometry-circle", f'<circle style="[[cx:30px;cy:30px;r:25px||]]" fill="{R}"/>')
    a("css-geometry-ellipse", f'<ellipse cx="30" cy="30" rx="5" ry="5" style="[[rx:28px;ry:20px||]]" fill="{R}"/>')
    a("css-geometry-rx", f'<rect x="2" y="2" width="56" height="56" style="[[rx:28px||]]" fill="{R}"/>')
    a("css-geometry-in-sheet", f'<style>[[circle{{r:25px}}||]]</style><circle cx="30" cy="30" r="8" fill="{R}"/>')


def strokes():
    a = lambda name, body, **k: add("strokes", name, body, **k)
    for cap in ("butt", "round", "square"):
        other = "butt" if cap != "butt" else "square"
        a(f"cap-{cap}", f'<path d="M20 30H40" stroke="{R}" stroke-width="24" stroke-linecap="[[{cap}||{other}]]"/>')
        a(f"cap-{cap}-slanted", f'<path d="M22 22L38 38" stroke="{R}" stroke-width="24" stroke-linecap="[[{cap}||{other}]]"/>')
        a(f"cap-{cap}-dashes", f'<path d="M0 30H60" stroke="{R}" stroke-width="20" stroke-dasharray="8 17" stroke-linecap="[[{cap}||{other}]]"/>')
        a(f"cap-{cap}-on-curve", f'<path d="M13 40C13 5 47 5 47 40" fill="none" stroke="{R}" stroke-width="24" stroke-linecap="[[{cap}||{other}]]"/>')
        a(f"cap-{cap}-in-style", f'<path d="M20 30H40" stroke="{R}" stroke-width="24" style="stroke-linecap:[[{cap}||{other}]]"/>')
    a("cap-inherited", f'<g [[stroke-linecap="square"||]]><path d="M20 30H40" stroke="{R}" stroke-width="24"/></g>')
    a("cap-closed-has-none", f'<path d="M20 30H40[[Z||]]" fill="none" stroke="{R}" stroke-width="24" stroke-linecap="square" stroke-linejoin="bevel"/>')
    a("cap-round-on-dot", f'<path d="M30 30[[h0||]]" stroke="{R}" stroke-width="40" stroke-linecap="round"/>')
    a("cap-square-on-dot", f'<path d="M30 30h0" stroke="{R}" stroke-width="40" stroke-linecap="[[square||butt]]"/>')
    a("cap-butt-on-dot", f'<path d="M30 30h0" stroke="{R}" stroke-width="40" stroke-linecap="[[butt||round]]"/><rect width="20" height="20" fill="{B}"/>')
    a("cap-round-on-closed-dot", f'<path d="M30 30[[z||]]" stroke="{R}" stroke-width="40" stroke-linecap="round"/>')
    a("cap-on-line", f'<line x1="20" y1="30" x2="40" y2="30" stroke="{R}" stroke-width="24" stroke-linecap="[[square||butt]]"/>')
    a("cap-on-polyline", f'<polyline points="15,40 30,20 45,40" fill="none" stroke="{R}" stroke-width="20" stroke-linecap="[[square||butt]]"/>')
    for join in ("miter", "round", "bevel"):
        other = "bevel" if join != "bevel" else "miter"
        other = "miter" if join == "round" else other
        a(f"join-{join}", f'<path d="M8 90L30 33L52 90" fill="none" stroke="{R}" stroke-width="37" stroke-linejoin="[[{join}||{other}]]"/>')
        if join == "round":
            other = "bevel"
        else:
            a(f"join-{join}-square-corner", f'<path d="M28 99V28H99" fill="none" stroke="{R}" stroke-width="56" stroke-linejoin="[[{join}||{other}]]"/>')
        a(f"join-{join}-closed", f'<path d="M20 20H40V40H20Z" fill="none" stroke="{R}" stroke-width="40" stroke-linejoin="[[{join}||{other}]]"/>')
        a(f"join-{join}-polygon", f'<polygon points="30,26 40,43 20,43" fill="none" stroke="{R}" stroke-width="32" stroke-linejoin="[[{join}||{other}]]"/>')
    a("join-default-is-miter", f'<path d="M28 99V28H99" fill="none" stroke="{R}" stroke-width="56" [[||stroke-linejoin="bevel"]]/>')
    a("join-round-on-rect", f'<rect x="20" y="20" width="20" height="20" stroke="{R}" fill="{R}" stroke-width="40" stroke-linejoin="[[round||bevel]]"/>')
    a("join-bevel-on-rect", f'<rect x="15" y="15" width="30" height="30" stroke="{R}" fill="{R}" stroke-width="30" stroke-linejoin="[[bevel||miter]]"/>')
    a("join-arcs-as-miter", f'<path d="M28 99V28H99" fill="none" stroke="{R}" stroke-width="56" stroke-linejoin="[[arcs||bevel]]"/>',
      plain=f'<path d="M28 99V28H99" fill="none" stroke="{R}" stroke-width="56" stroke-linejoin="miter"/>')
    # A right angle: 1/sin(45 degrees) = 1.414.
    for limit, other, word in (("1.41", "1.42", "exceeded"), ("1.42", "1.41", "kept"), ("1", "4", "of-1")):
        a(f"miterlimit-{word}", f'<path d="M28 99V28H99" fill="none" stroke="{R}" stroke-width="56" stroke-miterlimit="[[{limit}||{other}]]"/>')
    # Half of an angle of 32 degrees has a sine of 1/3.63, half of one of 26 degrees of 1/4.45.
    a("miterlimit-default-4-kept", f'<path d="M18.53 82L30 42L41.47 82" fill="none" stroke="{R}" stroke-width="22" [[||stroke-miterlimit="1"]]/>')
    a("miterlimit-default-4-exceeded", f'<path d="M20.76 86L30 46L39.24 86" fill="none" stroke="{R}" stroke-width="20" [[||stroke-miterlimit="9"]]/>')
    a("miterlimit-on-star", f'<path d="M20.76 86L30 46L39.24 86" fill="none" stroke="{R}" stroke-width="20" stroke-miterlimit="[[12||2]]"/>')
    a("miterlimit-inherited", f'<g [[stroke-miterlimit="1"||]]><path d="M28 99V28H99" fill="none" stroke="{R}" stroke-width="56"/></g>')
    a("width-default-1", f'<g transform="scale(20)"><path d="M0 1.5H3" stroke="{R}" [[||stroke-width=".2"]]/></g>')
    a("width-percent", f'<path d="M0 30H60" stroke="{R}" stroke-width="[[40%||1]]"/>')
    a("width-zero", f'<rect x="10" y="10" width="40" height="40" fill="{Y}" stroke="{R}" stroke-width="[[0||8]]"/>')
    a("width-unit", f'<path d="M0 30H60" stroke="{R}" stroke-width="[[6mm||6]]"/>')
    a("width-in-em", f'<path d="M0 30H60" stroke="{R}" font-size="12" stroke-width="[[2em||2]]"/>')
    a("width-scaled-unevenly", f'<g transform="[[scale(3,1)||]]"><path d="M10 10V50" stroke="{R}" stroke-width="9"/></g>')
    a("width-skewed", f'<path transform="[[skewX(40)||]]" d="M-10 10V50" stroke="{R}" stroke-width="12"/><path d="M0 55H60" stroke="{B}" stroke-width="10"/>')
    a("non-scaling", f'<g transform="scale(4)"><path d="M1 7.5H14" stroke="{R}" stroke-width="[[8||48]]" vector-effect="non-scaling-stroke"/></g>',
      plain=f'<path d="M4 30H56" stroke="{R}" stroke-width="8"/>')
    a("non-scaling-in-style", f'<g transform="scale(4 1)"><path d="M7.5 5V55" stroke="{R}" stroke-width="9" style="[[vector-effect:non-scaling-stroke||]]"/></g>',
      plain=f'<path d="M30 5V55" stroke="{R}" stroke-width="9"/>')
    a("none", f'<rect x="10" y="10" width="40" height="40" fill="{Y}" stroke="[[none||{R}]]" stroke-width="8"/>')
    a("over-fill", f'<rect x="12" y="12" width="36" height="36" fill="{Y}" stroke="[[{R}||none]]" stroke-width="16"/>')
    a("paint-order-stroke", f'<rect x="12" y="12" width="36" height="36" fill="{Y}" stroke="{R}" stroke-width="16" [[paint-order="stroke"||]]/>')
    a("paint-order-stroke-fill", f'<circle cx="30" cy="30" r="18" fill="{Y}" stroke="{R}" stroke-width="16" style="[[paint-order:stroke fill||]]"/>')
    a("paint-order-fill-stroke", f'<circle cx="30" cy="30" r="18" fill="{Y}" stroke="{R}" stroke-width="16" paint-order="[[fill||stroke]]"/>')
    a("paint-order-inherited", f'<g [[paint-order="stroke"||]]><circle cx="30" cy="30" r="18" fill="{Y}" stroke="{R}" stroke-width="16"/></g>')
    a("opacity", f'<path d="M0 30H60" stroke="{R}" stroke-width="30" [[stroke-opacity=".5"||]]/>')
    a("opacity-percent", f'<path d="M0 30H60" stroke="{R}" stroke-width="30" [[stroke-opacity="40%"||]]/>')
    a("crossing-itself-covers-once", f'<path d="M5 5L55 55M55 5L5 55" stroke="{R}" stroke-width="14" [[stroke-opacity=".5"||]]/>')
    a("reversed-loop-is-whole", f'<path d="M10 30A20 20 0 1 1 50 30A20 20 0 1 1 10 30" fill="none" stroke="{R}" stroke-width="18"/>')
    a("thick-circle-has-no-hole", f'<circle cx="30" cy="30" r="[[10||22]]" fill="none" stroke="{R}" stroke-width="[[44||20]]"/>',
      plain=f'<circle cx="30" cy="30" r="32" fill="{R}"/>')


def dashes():
    a = lambda name, body, **k: add("dashes", name, body, **k)
    line = lambda attributes: f'<path d="M0 30H60" stroke="{R}" stroke-width="40" {attributes}/>'
    a("one", line('[[stroke-dasharray="12"||]]'))
    a("two", line('stroke-dasharray="[[16 6||6 16]]"'))
    a("three-are-doubled", line('stroke-dasharray="[[12 4 8||12 4 8 4]]"'))
    a("four", line('stroke-dasharray="[[4 4 16 6||4 4]]"'))
    a("commas", line('stroke-dasharray="[[16,6||6,16]]"'))
    a("commas-and-blanks", line('stroke-dasharray="[[ 16 , 6||6]] "'))
    a("percent", line('stroke-dasharray="[[20%||5%]]"'))
    a("units", line('stroke-dasharray="[[4mm 2mm||4 2]]"'))
    a("em", line('font-size="10" stroke-dasharray="[[1.5em .5em||1.5 .5]]"'))
    a("none", line('stroke-dasharray="[[none||9]]"'))
    a("all-zero-is-solid", line('stroke-dasharray="[[0 0||9]]"'))
    a("negative-is-an-error", line('stroke-dasharray="[[-5 5||9]]"'))
    a("zero-dash-round-cap", line('stroke-linecap="round" stroke-dasharray="0 30" stroke-dashoffset="-15"').replace('"40"', '"24"'))
    a("zero-dash-square-cap", line('stroke-linecap="square" stroke-dasharray="0 30" stroke-dashoffset="-15"').replace('"40"', '"20"'))
    a("zero-gap-is-solid", line('stroke-dasharray="[[10 0||10 9]]"'))
    a("inherited", f'<g [[stroke-dasharray="14 8"||]]>{line("")}</g>')
    a("in-style", line('style="[[stroke-dasharray:14 8||]]"'))
    for name, offset in {"positive": "9", "negative": "-9", "quarter": "5", "beyond-period": "49", "far-negative": "-71", "percent": "15%", "unit": "2mm", "decimal": "7.5"}.items():
        a(f"offset-{name}", line(f'stroke-dasharray="13 7" [[stroke-dashoffset="{offset}"||]]'))
    a("offset-with-odd-number", line('stroke-dasharray="14 5 6" [[stroke-dashoffset="8"||]]'))
    a("offset-with-odd-number-negative", line('stroke-dasharray="14 5 6" [[stroke-dashoffset="-8"||]]'))
    a("offset-inherited", f'<g [[stroke-dashoffset="7"||]]>{line(chr(34).join(["stroke-dasharray=", "13 7", ""]))}</g>')
    a("offset-in-style", line('stroke-dasharray="13 7" style="[[stroke-dashoffset:-6px||]]"'))
    ring = 'fill="none" stroke-width="18"'
    a("rect-starts-top-left", f'<rect x="10" y="10" width="40" height="40" {ring} stroke="{R}" [[stroke-dasharray="60 90"||]]/>')
    a("rect-rounded-starts-after-corner", f'<rect x="10" y="10" width="40" height="40" rx="14" {ring} stroke="{R}" [[stroke-dasharray="40 200"||]]/>')
    a("rect-offset", f'<rect x="10" y="10" width="40" height="40" {ring} stroke="{R}" stroke-dasharray="60 90" [[stroke-dashoffset="40"||]]/>')
    a("circle-starts-right", f'<circle cx="30" cy="30" r="20" {ring} stroke="{R}" [[stroke-dasharray="45 200"||]]/>')
    a("circle-offset", f'<circle cx="30" cy="30" r="20" {ring} stroke="{R}" stroke-dasharray="45 200" [[stroke-dashoffset="20"||]]/>')
    a("circle-negative-offset", f'<circle cx="30" cy="30" r="20" {ring} stroke="{R}" stroke-dasharray="45 200" [[stroke-dashoffset="-20"||]]/>')
    a("ellipse-starts-right", f'<ellipse cx="30" cy="30" rx="20" ry="14" {ring} stroke="{R}" [[stroke-dasharray="40 200"||]]/>')
    a("polygon", f'<polygon points="10,10 50,10 30,50" {ring} stroke="{R}" [[stroke-dasharray="50 70"||]]/>')
    a("polyline", f'<polyline points="10,10 50,10 30,50" {ring} stroke="{R}" [[stroke-dasharray="50 70"||]]/>')
    a("line", f'<line x1="5" y1="30" x2="55" y2="30" stroke="{R}" stroke-width="30" [[stroke-dasharray="15 10"||]]/>')
    a("run-around-corners", f'<path d="M10 50V10H50" {ring} stroke="{R}" [[stroke-dasharray="20 10 30 10"||]]/>')
    a("begin-anew-in-each-subpath", f'<path d="M0 15H25M0 45H60" stroke="{R}" stroke-width="26" [[stroke-dasharray="20 15"||]]/>')
    a("on-curve", f'<path d="M5 50C5 0 55 0 55 50" {ring} stroke="{R}" [[stroke-dasharray="18 12"||]]/>')
    a("on-arc", f'<path d="M8 40A22 22 0 0 1 52 40" {ring} stroke="{R}" [[stroke-dasharray="18 18"||]]/>')
    a("along-closing-line", f'<path d="M10 10H50V50Z" {ring} stroke="{R}" [[stroke-dasharray="70 20 200"||]]/>'.replace("70 20 200", "80 30"))
    for name, shape in {
        "path": '<path d="M0 30H60" {} stroke-dasharray="25 25"',
        "path-curved": '<path d="M5 50C5 -40 55 -40 55 50" {} stroke-dasharray="25 25"',
        "line": '<line x1="0" y1="30" x2="60" y2="30" {} stroke-dasharray="25 25"',
        "rect": '<rect x="10" y="10" width="40" height="40" {} stroke-dasharray="25 25"',
        "circle": '<circle cx="30" cy="30" r="20" {} stroke-dasharray="25 25"',
        "ellipse": '<ellipse cx="30" cy="30" rx="20" ry="16" {} stroke-dasharray="25 25"',
        "polyline": '<polyline points="10,50 10,10 50,10" {} stroke-dasharray="25 25"',
        "polygon": '<polygon points="10,10 50,10 50,50 10,50" {} stroke-dasharray="25 25"',
    }.items():
        end = f' fill="none" stroke="{R}" stroke-width="18"/>'
        # Quarters of ellipses between axes are as long as each other; a quarter of the curve is measured along 100,000 chords.
        plain = {
            "circle": '<path d="M50 30A20 20 0 0 1 30 50M10 30A20 20 0 0 1 30 10"',
            "ellipse": '<path d="M50 30A20 16 0 0 1 30 46M10 30A20 16 0 0 1 30 14"',
            "path-curved": shape.format("").replace("25 25", "38.48376"),
        }.get(name)
        plain = plain and plain + end
        a(f"pathlength-{name}", shape.format('[[pathLength="100"||]]') + end, plain=plain)
    a("pathlength-offset", line('pathLength="100" stroke-dasharray="30 20" [[stroke-dashoffset="15"||]]'))
    a("pathlength-shorter", line('[[pathLength="12"||]] stroke-dasharray="4"'))
    a("pathlength-negative-counts-not", line('pathLength="-100" [[stroke-dasharray="4 6"||]]'))
    a("pathlength-zero-counts-not", line('pathLength="[[0||12]]" stroke-dasharray="4 6"'))
    a("pathlength-and-percent", line('pathLength="30" stroke-dasharray="[[10%||20%]]"'))
    a("with-markers-whole", f'<marker id="m" markerWidth="2" markerHeight="2" refX="1" refY="1"><circle cx="1" cy="1" r="1" fill="{B}"/></marker>'
      f'<path d="M10 30H50" stroke="{R}" stroke-width="8" [[stroke-dasharray="6 200" marker-end="url(#m)"||]]/>')
    a("scaled", f'<g transform="scale(6)"><path d="M0 5H10" stroke="{R}" stroke-width="8" [[stroke-dasharray="2 1"||]]/></g>')


def units():
    a = lambda name, body, **k: add("units", name, body, **k)
    for unit, number in {"px": 45, "pt": 33, "pc": 2.5, "mm": 11, "cm": 1.1, "in": 0.45, "Q": 44}.items():
        a(f"{unit}-width", f'<rect width="[[{number}{unit}||1]]" height="30" fill="{R}"/>')
        a(f"{unit}-place", f'<rect x="[[{number * .7:.4g}{unit}||0]]" y="[[{number * .5:.4g}{unit}||0]]" width="25" height="25" fill="{R}"/>')
        a(f"{unit}-radius", f'<circle cx="30" cy="30" r="[[{number * .6:.4g}{unit}||2]]" fill="{R}"/>')
        a(f"{unit}-in-style", f'<path d="M0 30H60" stroke="{R}" style="stroke-width:[[{number}{unit}||1]]"/>')
    a("em", f'<g font-size="[[14||4]]"><rect width="3em" height="2em" fill="{R}"/></g>')
    a("em-without-font-size", f'<rect width="[[3em||1em]]" height="3em" fill="{R}"/>')
    a("rem-without-font-size", f'<rect [[style="width:3rem;height:3rem"||width="1" height="1"]] fill="{R}"/>')
    turned = 'x="24" y="6" width="30" height="14"'
    a("origin-in-fill-box", f'<rect {turned} fill="{R}" style="transform:rotate(90deg);transform-origin:50% 50%;transform-box:[[fill-box||view-box]]"/>')
    a("origin-in-view-box", f'<rect {turned} fill="{R}" style="transform:rotate(90deg);transform-origin:50% 50%;transform-box:[[view-box||fill-box]]"/>')
    a("fill-box-without-origin", f'<rect {turned} fill="{R}" style="transform:rotate(60deg);transform-box:[[fill-box||view-box]]"/>')
    a("length-of-origin-in-fill-box", f'<rect {turned} fill="{R}" style="transform:rotate(90deg);transform-origin:4px 10px;transform-box:[[fill-box||view-box]]"/>')
    a("percent-of-fill-box", f'<rect x="4" y="6" width="20" height="20" fill="{R}" style="transform:translate(100%,120%);transform-box:[[fill-box||view-box]]"/>')
    a("fill-box-of-group", f'<g fill="{R}" style="transform:scale(.5);transform-origin:100% 100%;transform-box:[[fill-box||view-box]]"><rect width="40" height="10"/><circle cx="30" cy="26" r="14"/></g>')
    a("em-of-inherited-size", f'<g font-size="14"><g font-size="[[50%||100%]]"><rect width="4em" height="4em" fill="{R}"/></g></g>')
    a("em-of-em", f'<g font-size="10"><g font-size="[[2em||1em]]"><rect width="2em" height="2em" fill="{R}"/></g></g>')
    a("ex", f'<g font-size="20"><rect width="[[4ex||4]]" height="40" fill="{R}"/></g>')
    a("percent-across", f'<rect width="[[70%||7%]]" height="30" fill="{R}"/>')
    a("percent-down", f'<rect width="30" height="[[70%||7%]]" fill="{R}"/>')
    a("percent-place", f'<rect x="[[40%||0%]]" y="[[30%||0%]]" width="30" height="30" fill="{R}"/>')
    a("percent-of-diagonal", f'<svg viewBox="0 0 120 60" preserveAspectRatio="none" width="60" height="60"><circle cx="60" cy="30" r="[[25%||5%]]" fill="{R}"/></svg>')
    a("percent-ellipse", f'<svg viewBox="0 0 120 60" preserveAspectRatio="none" width="60" height="60"><ellipse cx="50%" cy="50%" rx="[[40%||9%]]" ry="[[40%||9%]]" fill="{R}"/></svg>')
    a("percent-line", f'<line x1="10%" y1="20%" x2="[[90%||10%]]" y2="[[80%||20%]]" stroke="{R}" stroke-width="12"/>')
    a("percent-in-nested", f'<svg x="10" y="10" width="40" height="40"><rect width="[[100%||20%]]" height="[[50%||10%]]" fill="{R}"/></svg>')
    a("percent-of-viewbox", f'<svg width="60" height="60" viewBox="0 0 10 10"><rect width="[[80%||9%]]" height="[[60%||9%]]" fill="{R}"/></svg>')
    a("plus-sign", f'<rect width="+40" height="[[+30||1]]" fill="{R}"/>')
    a("leading-point", f'<g transform="scale(60)"><rect width=".8" height="[[.5||.01]]" fill="{R}"/></g>')
    a("exponent", f'<rect width="[[4e1||4]]" height="300e-1" fill="{R}"/>')
    a("exponent-in-style", f'<path d="M0 30H60" stroke="{R}" style="stroke-width:[[3e1||3]]"/>')
    a("blanks-around", f'<rect width=" [[40||4]] " height=" 30 " fill="{R}"/>')


def clips():
    a = lambda name, body, **k: add("clips", name, body, **k)
    full = f'<rect width="60" height="60" fill="{R}" {{}}/>'
    clip = lambda content, attributes="", use='[[clip-path="url(#c)"||]]': f'<clipPath id="c" {attributes}>{content}</clipPath>' + full.format(use)
    a("circle", clip('<circle cx="30" cy="30" r="20"/>'))
    a("rect", clip('<rect x="10" y="15" width="30" height="30"/>'))
    a("ellipse", clip('<ellipse cx="30" cy="30" rx="25" ry="12"/>'))
    a("path", clip('<path d="M5 5L55 30L5 55Z"/>'))
    a("polygon", clip('<polygon points="5,5 55,30 5,55"/>'))
    a("polyline", clip('<polyline points="5,5 55,30 5,55"/>'))
    a("line-encloses-nothing", clip('<line x1="0" y1="0" x2="60" y2="60" stroke="#000" stroke-width="20"/>') )
    a("stroke-counts-not", clip('<circle cx="30" cy="30" r="12" stroke="#000" stroke-width="20"/>'))
    a("paint-counts-not", clip('<circle cx="30" cy="30" r="22" fill="none" opacity=".2"/>'))
    a("two-shapes-unite", clip('<rect x="5" y="5" width="30" height="30"/>[[<rect x="25" y="25" width="30" height="30"/>||]]', use='clip-path="url(#c)"'))
    a("empty-hides-all", clip('') + f'<rect width="20" height="20" fill="{B}"/>')
    a("hidden-child-counts-not", clip('<rect width="30" height="60"/><rect x="30" width="30" height="60" [[visibility="hidden"||]]/>', use='clip-path="url(#c)"'))
    a("child-without-display-counts-not", clip('<rect width="30" height="60"/><rect x="30" width="30" height="60" [[display="none"||]]/>', use='clip-path="url(#c)"'))
    a("group-child-counts-not", clip('<rect width="30" height="60"/>[[<g><rect x="30" width="30" height="60"/></g>||<rect x="30" width="30" height="60"/>]]', use='clip-path="url(#c)"'))
    a("on-display-none-works", f'<g display="none"><clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath></g>' + full.format('[[clip-path="url(#c)"||]]'))
    star = 'M30 2L48 56L2 22H58L12 56Z'
    two = 'M2 2H58V58H2ZM15 15H45V45H15Z'
    a("rule-evenodd", clip(f'<path d="{two}" [[clip-rule="evenodd"||]]/>', use='clip-path="url(#c)"'))
    a("rule-nonzero", clip(f'<path d="{two}" clip-rule="[[nonzero||evenodd]]"/>', use='clip-path="url(#c)"'))
    a("rule-evenodd-star", clip(f'<path d="{star}" [[clip-rule="evenodd"||]]/>', use='clip-path="url(#c)"').replace("[[", "").replace("||]]", ""))
    a("rule-in-style", clip(f'<path d="{two}" style="[[clip-rule:evenodd||]]"/>', use='clip-path="url(#c)"'))
    a("rule-inherited", clip(f'<path d="{two}"/>', '[[clip-rule="evenodd"||]]', use='clip-path="url(#c)"'))
    a("fill-rule-counts-not", clip(f'<path d="{two}" fill-rule="[[evenodd||nonzero]]" [[||clip-rule="evenodd"]]/>', use='clip-path="url(#c)"'))
    a("rule-on-clipped-counts-not", clip(f'<path d="{two}" [[||clip-rule="evenodd"]]/>', use='clip-path="url(#c)" clip-rule="evenodd"'))
    a("rule-each-child-its-own", clip(f'<path d="M2 2H58V30H2ZM10 8H50V24H10Z" [[clip-rule="evenodd"||]]/><path d="M2 32H58V58H2ZM10 38H50V50H10Z"/>', use='clip-path="url(#c)"'))
    a("rule-through-use", f'<defs><path id="p" d="{two}" [[clip-rule="evenodd"||]]/></defs>' + clip('<use href="#p"/>', use='clip-path="url(#c)"'))
    a("units-bounding-box", clip('<circle cx=".5" cy=".5" r=".4"/>', '[[clipPathUnits="objectBoundingBox"||]]', use='clip-path="url(#c)"'))
    a("units-user-space", clip('<circle cx="30" cy="30" r="22"/>', 'clipPathUnits="[[userSpaceOnUse||objectBoundingBox]]"', use='clip-path="url(#c)"'))
    box = '<clipPath id="c" clipPathUnits="objectBoundingBox">{}</clipPath>'
    a("units-box-of-wide-shape", box.format('<circle cx=".5" cy=".5" r=".5"/>') + f'<rect x="2" y="15" width="56" height="30" fill="{R}" [[clip-path="url(#c)"||]]/>')
    a("units-box-of-group", box.format('<rect width=".5" height=".5"/>') + f'<g [[clip-path="url(#c)"||]]><rect x="5" y="5" width="30" height="30" fill="{R}"/><rect x="30" y="30" width="25" height="25" fill="{B}"/></g>')
    a("units-box-without-stroke", box.format('<rect width="1" height="1"/>') + f'<rect x="18" y="18" width="24" height="24" fill="{R}" stroke="{B}" stroke-width="16" [[clip-path="url(#c)"||]]/>')
    a("units-box-of-turned-shape", box.format('<rect width="1" height=".5"/>') + f'<rect x="15" y="15" width="30" height="30" transform="rotate(30 30 30)" fill="{R}" [[clip-path="url(#c)"||]]/>')
    a("units-box-of-group-with-turned-shape", box.format('<rect width=".5" height="1"/>') + f'<g [[clip-path="url(#c)"||]]><rect x="15" y="15" width="30" height="30" transform="rotate(45 30 30)" fill="{R}"/></g>')
    a("units-box-of-curve", box.format('<rect width="1" height=".5"/>') + f'<path d="M5 50C5 -10 55 -10 55 50Z" fill="{R}" [[clip-path="url(#c)"||]]/>')
    a("units-box-of-use", box.format('<rect width=".5" height="1"/>') + f'<defs><rect id="r" width="40" height="40" fill="{R}"/></defs><use href="#r" x="10" y="10" [[clip-path="url(#c)"||]]/>')
    a("transform-on-clippath", clip('<rect width="20" height="20"/>', '[[transform="translate(20 20) rotate(45)"||]]', use='clip-path="url(#c)"'))
    a("transform-on-child", clip('<rect width="20" height="20" [[transform="translate(10 20) scale(2)"||]]/>', use='clip-path="url(#c)"'))
    a("transform-on-clipped", f'<clipPath id="c"><rect width="20" height="20"/></clipPath><rect width="60" height="60" fill="{R}" clip-path="url(#c)" [[transform="translate(30 10) rotate(45)"||]]/>')
    a("transforms-on-all", f'<clipPath id="c" transform="translate(4 0)"><rect width="16" height="24" [[transform="skewX(40)"||]]/></clipPath><g transform="scale(1.5)"><rect width="60" height="60" fill="{R}" clip-path="url(#c)" transform="translate(10 8)"/></g>')
    a("on-group", '<clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath>' + f'<g [[clip-path="url(#c)"||]]><rect width="30" height="60" fill="{R}"/><rect x="30" width="30" height="60" fill="{B}"/></g>')
    a("on-nested-groups", f'<clipPath id="c"><rect width="40" height="60"/></clipPath><clipPath id="d"><rect y="20" width="60" height="40"/></clipPath><g clip-path="url(#c)"><g [[clip-path="url(#d)"||]]>{full.format("")}</g></g>')
    a("on-use", f'<clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath><defs><rect id="r" width="60" height="60" fill="{R}"/></defs><use href="#r" [[clip-path="url(#c)"||]]/>')
    a("on-moved-use", f'<clipPath id="c"><circle cx="20" cy="20" r="15"/></clipPath><defs><rect id="r" width="60" height="60" fill="{R}"/></defs><use href="#r" x="10" y="15" [[clip-path="url(#c)"||]]/>')
    a("on-stroke", f'<clipPath id="c"><rect width="30" height="60"/></clipPath><circle cx="30" cy="30" r="20" fill="none" stroke="{R}" stroke-width="18" [[clip-path="url(#c)"||]]/>')
    a("on-svg", f'<clipPath id="c"><rect width="30" height="60"/></clipPath><svg width="60" height="60" [[clip-path="url(#c)"||]]>{full.format("")}</svg>')
    a("on-a", f'<clipPath id="c"><rect width="30" height="60"/></clipPath><a [[clip-path="url(#c)"||]]>{full.format("")}</a>')
    a("on-markers", f'<clipPath id="c"><rect width="30" height="60"/></clipPath><marker id="m" markerWidth="4" markerHeight="4" refX="2" refY="2"><rect width="4" height="4" fill="{B}"/></marker><path d="M15 30H45" stroke="{R}" stroke-width="8" marker-start="url(#m)" marker-end="url(#m)" [[clip-path="url(#c)"||]]/>')
    nest = f'<clipPath id="d"><rect x="15" width="30" height="60"/></clipPath>'
    a("nested", nest + clip('<circle cx="30" cy="30" r="28"/>', '[[clip-path="url(#d)"||]]', use='clip-path="url(#c)"'))
    a("nested-in-style", nest + clip('<circle cx="30" cy="30" r="28"/>', 'style="[[clip-path:url(#d)||]]"', use='clip-path="url(#c)"'))
    a("nested-with-rule", f'<clipPath id="d"><path d="{two}" [[clip-rule="evenodd"||]]/></clipPath>' + clip('<circle cx="30" cy="30" r="28"/>', 'clip-path="url(#d)"', use='clip-path="url(#c)"'))
    a("nested-three-deep", f'<clipPath id="e"><rect y="20" width="60" height="20"/></clipPath><clipPath id="d" [[clip-path="url(#e)"||]]><rect x="15" width="30" height="60"/></clipPath>' + clip('<circle cx="30" cy="30" r="28"/>', 'clip-path="url(#d)"', use='clip-path="url(#c)"'))
    a("nested-after-transform", f'<clipPath id="d"><rect x="15" width="15" height="60"/></clipPath>' + clip('<rect width="30" height="30"/>', '[[clip-path="url(#d)"||]] transform="scale(2)"', use='clip-path="url(#c)"'))
    a("nested-box-units", f'<clipPath id="d" clipPathUnits="objectBoundingBox"><rect width=".5" height=".5"/></clipPath>' + clip('<circle cx="30" cy="30" r="28"/>', '[[clip-path="url(#d)"||]]', use='clip-path="url(#c)"'))
    a("clipped-child", nest + clip('<circle cx="30" cy="30" r="28" [[clip-path="url(#d)"||]]/>', use='clip-path="url(#c)"'))
    a("clipped-child-of-two", nest + clip('<circle cx="30" cy="15" r="14" [[clip-path="url(#d)"||]]/><rect y="32" width="60" height="25" [[clip-path="url(#d)"||]]/>', use='clip-path="url(#c)"'))
    a("clipped-child-of-two-one-only", nest + clip('<rect width="60" height="28" [[clip-path="url(#d)"||]]/><rect y="32" width="60" height="25"/>', use='clip-path="url(#c)"'))
    a("clipped-child-with-transform", nest + clip('<rect width="30" height="30" transform="scale(2)" [[clip-path="url(#d)"||]]/>', use='clip-path="url(#c)"'))
    a("clipped-child-box-units", f'<clipPath id="d" clipPathUnits="objectBoundingBox"><rect width=".5" height="1"/></clipPath>' + clip('<rect x="10" y="10" width="40" height="40" [[clip-path="url(#d)"||]]/>', use='clip-path="url(#c)"'))
    a("use-child", '<defs><circle id="p" cx="20" cy="20" r="18"/></defs>' + clip('<use href="#p" [[x="15" y="15"||]]/>', use='clip-path="url(#c)"'))
    a("use-child-xlink", '<defs><circle id="p" cx="20" cy="20" r="18"/></defs>' + clip('<use xlink:href="#p" x="15" y="15"/>'))
    a("use-child-with-transform", '<defs><rect id="p" width="20" height="20"/></defs>' + clip('<use href="#p" [[transform="translate(20 10) scale(2)"||]]/>', use='clip-path="url(#c)"'))
    a("use-child-clipped", nest + '<defs><rect id="p" width="60" height="40"/></defs>' + clip('<use href="#p" [[clip-path="url(#d)"||]]/>', use='clip-path="url(#c)"'))
    a("use-of-clipped", nest + '<defs><rect id="p" width="60" height="40" [[clip-path="url(#d)"||]]/></defs>' + clip('<use href="#p" y="10"/>', use='clip-path="url(#c)"'))
    a("in-style-attribute", '<clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath>' + full.format('style="[[clip-path:url(#c)||]]"'))
    a("in-style-quoted", '<clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath>' + full.format('''style="[[clip-path:url('#c')||]]"'''))
    a("in-sheet", '<style>[[rect{clip-path:url(#c)}||]]</style><clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath>' + full.format(''))
    a("none", '<clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath>' + full.format('clip-path="[[none||url(#c)]]"'))
    a("not-there-clips-not", '<clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath>' + full.format('clip-path="url(#[[d||c]])"'))
    a("is-not-inherited", f'<clipPath id="c" clipPathUnits="objectBoundingBox"><rect width=".5" height="1"/></clipPath><g clip-path="url(#c)"><rect width="20" height="60" fill="{R}" [[||clip-path="url(#c)"]]/><rect x="20" width="40" height="60" fill="{B}"/></g>')
    a("opacity-of-clipped", '<clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath>' + full.format('clip-path="url(#c)" [[opacity=".5"||]]'))
    a("in-defs-after-use", full.format('[[clip-path="url(#c)"||]]') + '<defs><clipPath id="c"><circle cx="30" cy="30" r="20"/></clipPath></defs>')


def masks():
    a = lambda name, body, **k: add("masks", name, body, **k)
    use = '[[mask="url(#m)"||]]'
    full = lambda attributes=use: f'<rect width="60" height="60" fill="{R}" {attributes}/>'
    W = 'fill="#fff"'
    mask = lambda content, attributes="", u=use: f'<mask id="m" {attributes}>{content}</mask>' + full(u)
    fix = 'mask="url(#m)"'
    a("white-circle", mask(f'<circle cx="30" cy="30" r="20" {W}/>'))
    a("white-name", mask('<circle cx="30" cy="30" r="20" fill="white"/>'))
    a("two-shapes-unite", mask(f'<rect width="35" height="35" {W}/>[[<rect x="25" y="25" width="35" height="35" {W}/>||]]', u=fix))
    a("black-beneath", mask(f'<rect width="60" height="60" fill="#000"/><circle cx="30" cy="30" r="20" {W}/>'))
    a("white-stroke", mask('<circle cx="30" cy="30" r="20" fill="none" stroke="#fff" stroke-width="14"/>'))
    a("white-group", mask(f'<g fill="#fff"><rect x="5" y="5" width="20" height="50"/><rect x="30" y="5" width="20" height="50"/></g>'))
    a("empty-hides-all", mask('') + f'<rect width="20" height="20" fill="{B}"/>')
    a("rule-evenodd", mask(f'<path d="M2 2H58V58H2ZM15 15H45V45H15Z" [[fill-rule="evenodd"||]] {W}/>', u=fix))
    a("transform-on-child", mask(f'<rect width="20" height="20" {W} [[transform="translate(10 20) scale(2)"||]]/>', u=fix))
    a("transform-on-masked", mask(f'<rect width="30" height="30" {W}/>', u=fix + ' [[transform="translate(15 15)"||]]'))
    a("use-in-mask", f'<defs><circle id="p" cx="20" cy="20" r="18" {W}/></defs>' + mask('<use href="#p" [[x="15" y="15"||]]/>', u=fix))
    a("clipped-child", f'<clipPath id="c"><rect width="30" height="60"/></clipPath>' + mask(f'<circle cx="30" cy="30" r="25" {W} [[clip-path="url(#c)"||]]/>', u=fix))
    a("clip-on-mask", f'<clipPath id="c"><rect width="30" height="60"/></clipPath>' + mask(f'<circle cx="30" cy="30" r="25" {W}/>', '[[clip-path="url(#c)"||]]', u=fix))
    a("mask-on-mask", f'<mask id="n"><rect width="30" height="60" {W}/></mask>' + mask(f'<circle cx="30" cy="30" r="25" {W}/>', '[[mask="url(#n)"||]]', u=fix))
    a("mask-and-clip", f'<clipPath id="c"><rect width="30" height="60"/></clipPath>' + mask(f'<circle cx="30" cy="30" r="25" {W}/>', u=fix + ' [[clip-path="url(#c)"||]]'))
    a("type-alpha", mask('<circle cx="30" cy="30" r="20" fill="#777"/>', 'mask-type="alpha"'))
    a("type-alpha-in-style", mask('<circle cx="30" cy="30" r="20" fill="#000"/>', 'style="[[mask-type:alpha||]]"', u=fix))
    a("type-luminance", mask(f'<circle cx="30" cy="30" r="20" {W}/>', 'mask-type="luminance"'))
    a("content-units-box", mask(f'<circle cx=".5" cy=".5" r=".4" {W}/>', '[[maskContentUnits="objectBoundingBox"||]]', u=fix))
    a("content-units-user", mask(f'<circle cx="30" cy="30" r="20" {W}/>', 'maskContentUnits="[[userSpaceOnUse||objectBoundingBox]]"', u=fix))
    big = f'<rect x="-99" y="-99" width="300" height="300" {W}/>'
    wide = f'<mask id="m" {{}}>{big}</mask><rect x="20" y="20" width="20" height="20" fill="{R}" stroke="{B}" stroke-width="28" mask="url(#m)"/>'
    a("region-default-is-120-percent", wide.format('[[||maskUnits="userSpaceOnUse" x="0" y="0" width="60" height="60"]]'))
    a("region-in-box-units", wide.format('[[x="0" y="0" width="1" height=".5"||]]'))
    a("region-in-percent", wide.format('[[x="0%" y="-50%" width="50%" height="150%"||]]'))
    a("region-in-user-units", wide.format('[[maskUnits="userSpaceOnUse" x="0" y="15" width="60" height="30"||]]'))
    a("region-in-user-percent", wide.format('[[maskUnits="userSpaceOnUse" x="0%" y="0%" width="50%" height="100%"||]]'))
    a("region-user-default", wide.format('[[maskUnits="userSpaceOnUse"||]]'))
    a("on-group", f'<mask id="m"><circle cx="30" cy="30" r="20" {W}/></mask><g {use}><rect width="30" height="60" fill="{R}"/><rect x="30" width="30" height="60" fill="{B}"/></g>')
    a("in-style", f'<mask id="m"><circle cx="30" cy="30" r="20" {W}/></mask>' + full('style="[[mask:url(#m)||]]"'))
    a("not-there-masks-not", f'<mask id="m"><circle cx="30" cy="30" r="20" {W}/></mask>' + full('mask="url(#[[n||m]])"'))
    a("none", f'<mask id="m"><circle cx="30" cy="30" r="20" {W}/></mask>' + full('mask="[[none||url(#m)]]"'))
    a("hidden-child-counts-not", mask(f'<rect width="30" height="60" {W}/><rect x="30" width="30" height="60" {W} [[visibility="hidden"||]]/>', u=fix))
    a("opacity-of-masked", mask(f'<circle cx="30" cy="30" r="20" {W}/>', u=fix + ' [[opacity=".5"||]]'))


def markers():
    a = lambda name, body, **k: add("markers", name, body, **k)
    arrow = f'<path d="M0 0L4 2L0 4Z" fill="{B}"/>'
    line = lambda attributes, d="M12 12H48V48", w=4: f'<path d="{d}" fill="none" stroke="{R}" stroke-width="{w}" {attributes}/>'
    mark = lambda attributes, content=arrow: f'<marker id="m" {attributes}>{content}</marker>'
    std = 'markerWidth="4" markerHeight="4" refX="2" refY="2"'
    a("start", mark(std) + line('[[marker-start="url(#m)"||]]', w=8))
    a("mid", mark(std) + line('[[marker-mid="url(#m)"||]]', w=8))
    a("mid-on-each", mark(std) + line('[[marker-mid="url(#m)"||]]', "M6 50L20 12L40 48L54 10", w=6))
    a("end", mark(std) + line('[[marker-end="url(#m)"||]]', w=8))
    a("all", mark(std) + line('[[marker-start="url(#m)" marker-mid="url(#m)" marker-end="url(#m)"||]]'))
    a("shorthand-in-style", mark(std) + line('style="[[marker:url(#m)||]]"'))
    a("shorthand-attribute-counts-not", mark(std) + line('[[marker="url(#m)"||marker-start="url(#m)" marker-mid="url(#m)" marker-end="url(#m)"]]'))
    a("in-sheet", f'<style>[[path[d]{{marker-mid:url(#m);marker-end:url(#m)}}||]]</style>' + mark(std, f'<circle cx="2" cy="2" r="2" fill="{B}"/>') + line('', w=6))
    a("inherited", mark(std) + '<g [[marker-start="url(#m)" marker-end="url(#m)"||]]>' + line('', w=6) + '</g>')
    a("none", mark(std) + '<g marker-start="url(#m)" marker-end="url(#m)">' + line('style="marker-start:[[none||url(#m)]];marker-end:[[none||url(#m)]]"', w=6) + '</g>')
    a("orient-auto", mark(std + ' [[orient="auto"||]]') + line('marker-mid="url(#m)" marker-end="url(#m)"', "M12 10H40V48", w=7))
    a("orient-auto-start", mark(std + ' [[orient="auto"||]]') + line('marker-start="url(#m)"', "M30 30V60", w=10))
    a("orient-auto-start-reverse", mark(std + ' orient="[[auto-start-reverse||auto]]"') + line('marker-start="url(#m)"', "M24 30H60", w=10))
    a("orient-auto-start-reverse-end", mark(std + ' [[orient="auto-start-reverse"||]]') + line('marker-end="url(#m)"', "M30 0V30", w=10))
    a("orient-auto-start-reverse-mid", mark(std + ' [[orient="auto-start-reverse"||]]') + line('marker-mid="url(#m)"', "M30 0V30V60", w=10))
    a("orient-auto-start-reverse-slanted", mark(std + ' orient="[[auto-start-reverse||auto]]"') + line('marker-start="url(#m)"', "M30 30L60 55", w=10))
    a("orient-angle", mark(std + ' [[orient="90"||]]') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("orient-angle-unit", mark(std + ' [[orient="90deg"||]]') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("orient-angle-turn", mark(std + ' [[orient=".25turn"||]]') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("orient-angle-rad", mark(std + ' [[orient="1.5708rad"||]]') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("orient-angle-grad", mark(std + ' [[orient="100grad"||]]') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("orient-angle-negative", mark(std + ' [[orient="-45"||]]') + line('marker-end="url(#m)"', "M0 30H30", w=11))
    a("orient-auto-on-curve", mark(std + ' [[orient="auto"||]]') + line('marker-end="url(#m)"', "M5 5C5 40 30 30 30 36", w=10))
    a("orient-auto-mid-halves-angle", mark(std + ' [[orient="auto"||]]') + line('marker-mid="url(#m)"', "M0 30H30V60", w=11))
    a("orient-auto-closed", mark(std + ' [[orient="auto"||]]') + line('marker-start="url(#m)"', "M20 20H50V50H20Z", w=9))
    a("orient-auto-arc", mark(std + ' [[orient="auto"||]]') + line('marker-end="url(#m)"', "M5 20A20 20 0 0 1 30 38", w=10))
    a("units-stroke-width", mark('markerWidth="4" markerHeight="4" refX="2" refY="2" [[markerUnits="strokeWidth"||markerUnits="userSpaceOnUse"]]') + line('marker-end="url(#m)"', "M0 30H30", w=9))
    a("units-default-stroke-width", mark(std + '[[|| markerUnits="userSpaceOnUse"]]') + line('marker-end="url(#m)"', "M0 30H30", w=9))
    a("units-user-space", mark('markerWidth="24" markerHeight="24" refX="12" refY="12" [[markerUnits="userSpaceOnUse"||]]', f'<path d="M0 0L24 12L0 24Z" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=3))
    a("units-user-space-thick-line", mark(std.replace('4"', '9"') + ' markerUnits="[[userSpaceOnUse||strokeWidth]]"') + line('marker-end="url(#m)"', "M0 30H30", w=12))
    a("size-default-3", mark('refX="2" refY="2"[[|| markerWidth="1" markerHeight="1"]]', f'<rect width="9" height="9" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("size-clips", mark('markerWidth="[[2||4]]" markerHeight="4" refX="2" refY="2"', f'<rect width="4" height="4" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("overflow-visible", mark('markerWidth="1" markerHeight="1" refX="2" refY="2" [[overflow="visible"||]]') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("overflow-in-style", mark('markerWidth="1" markerHeight="1" refX="2" refY="2" style="[[overflow:visible||]]"') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("overflow-auto-shows", mark('markerWidth="1" markerHeight="1" refX="2" refY="2" overflow="[[auto||hidden]]"') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("overflow-hidden", mark('markerWidth="2" markerHeight="4" refX="2" refY="2" overflow="[[hidden||visible]]"', f'<rect width="4" height="4" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("ref-x", mark('markerWidth="4" markerHeight="4" [[refX="4"||]] refY="2"') + line('marker-end="url(#m)"', "M0 30H40", w=10))
    a("ref-y", mark('markerWidth="4" markerHeight="4" refX="2" [[refY="4"||]]') + line('marker-end="url(#m)"', "M0 40H30", w=10))
    a("ref-default-0", mark('markerWidth="4" markerHeight="4"[[|| refX="3" refY="3"]]') + line('marker-end="url(#m)"', "M0 20H20", w=9))
    a("ref-negative", mark('markerWidth="4" markerHeight="4" [[refX="-1" refY="-1"||]]') + line('marker-end="url(#m)"', "M0 10H10", w=9))
    a("ref-percent", mark('markerWidth="4" markerHeight="4" [[refX="100%" refY="50%"||]]') + line('marker-end="url(#m)"', "M0 40H40", w=9),
      plain=mark('markerWidth="4" markerHeight="4" refX="4" refY="2"') + line('marker-end="url(#m)"', "M0 40H40", w=9))
    a("ref-center", mark('markerWidth="4" markerHeight="4" [[refX="center" refY="center"||]]') + line('marker-end="url(#m)"', "M0 40H40", w=9),
      plain=mark('markerWidth="4" markerHeight="4" refX="2" refY="2"') + line('marker-end="url(#m)"', "M0 40H40", w=9))
    a("ref-right-bottom", mark('markerWidth="4" markerHeight="4" [[refX="right" refY="bottom"||]]') + line('marker-end="url(#m)"', "M0 40H40", w=9),
      plain=mark('markerWidth="4" markerHeight="4" refX="4" refY="4"') + line('marker-end="url(#m)"', "M0 40H40", w=9))
    a("ref-left-top", mark('markerWidth="4" markerHeight="4" viewBox="1 1 4 4" refX="[[left||3]]" refY="[[top||3]]"', f'<rect width="9" height="9" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 20H20", w=9),
      plain=mark('markerWidth="4" markerHeight="4"', f'<rect width="9" height="9" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 20H20", w=9))
    a("viewbox", mark('markerWidth="4" markerHeight="4" refX="5" refY="5" [[viewBox="0 0 10 10"||]]', f'<rect width="10" height="10" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=8))
    a("viewbox-origin", mark('markerWidth="4" markerHeight="4" viewBox="[[-5 -5||0 0]] 10 10"', f'<circle r="5" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=9))
    a("viewbox-ref-in-its-units", mark('markerWidth="4" markerHeight="4" viewBox="0 0 20 20" [[refX="20" refY="10"||]]', f'<rect width="20" height="20" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H40", w=8))
    a("viewbox-wide-is-centred", mark('markerWidth="4" markerHeight="4" refX="10" refY="5" viewBox="0 0 20 10" [[||preserveAspectRatio="none"]]', f'<rect width="20" height="10" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("viewbox-none-stretches", mark('markerWidth="4" markerHeight="4" refX="10" refY="5" viewBox="0 0 20 10" [[preserveAspectRatio="none"||]]', f'<rect width="20" height="10" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    a("viewbox-slice", mark('markerWidth="4" markerHeight="4" refX="10" refY="5" viewBox="0 0 20 10" [[preserveAspectRatio="xMidYMid slice"||]]', f'<rect width="20" height="10" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=10))
    for element, body in {"line": '<line x1="10" y1="30" x2="50" y2="30"', "polyline": '<polyline points="10,45 30,15 50,45" fill="none"', "polygon": '<polygon points="12,45 30,15 48,45" fill="none"'}.items():
        a(f"on-{element}", mark(std) + body + f' stroke="{R}" stroke-width="5" [[marker-start="url(#m)" marker-mid="url(#m)" marker-end="url(#m)"||]]/>')
    for element, body in {"rect": '<rect x="12" y="12" width="36" height="36"', "circle": '<circle cx="30" cy="30" r="20"', "ellipse": '<ellipse cx="30" cy="30" rx="20" ry="15"'}.items():
        a(f"not-on-{element}", mark(std) + f'<g style="marker:url(#m)">{body} fill="none" stroke="{R}" stroke-width="8"/></g>')
    a("without-stroke-paint", mark(std) + f'<path d="M15 15H45V45" fill="none" stroke-width="7" [[marker-start="url(#m)" marker-mid="url(#m)" marker-end="url(#m)"||]]/>')
    a("own-colours", mark(std, f'<rect width="4" height="4"[[ fill="{O}"||]]/>') + line('marker-end="url(#m)"', "M0 30H30", w=7))
    a("inherits-from-marker-not-path", f'<g [[fill="{G}"||]]>' + mark(std, '<rect width="4" height="4"/>') + '</g>' + f'<g fill="{P}">' + line('marker-end="url(#m)"', "M0 30H30", w=7) + '</g>')
    a("context-stroke", mark(std, '<rect width="4" height="4" fill="[[context-stroke||none]]"/>') + line('marker-end="url(#m)"', "M0 30H30", w=7))
    a("context-fill", mark(std, '<rect width="4" height="4" fill="[[context-fill||none]]"/>') + f'<path d="M30 30L50 50" stroke="{R}" fill="{O}" stroke-width="8" marker-start="url(#m)"/>')
    a("on-scaled-path", mark(std) + '<g transform="[[scale(3 2)||]]">' + line('marker-end="url(#m)"', "M0 15H10", w=4) + '</g>')
    a("display-none-on-marker-counts-not", mark(std + ' display="none"') + line('[[marker-end="url(#m)"||]]', "M0 30H30", w=7))
    a("hidden-content", mark(std, f'<rect width="4" height="4" fill="{B}" [[visibility="hidden"||]]/>') + line('marker-end="url(#m)"', "M0 30H30", w=7))
    a("hidden-path-hides-markers", mark(std, f'<rect width="4" height="4" fill="{B}"/>') + line('marker-end="url(#m)" [[visibility="hidden"||]]', "M0 30H30", w=7) + f'<rect width="10" height="10" fill="{G}"/>')
    a("opacity-on-marker", mark(std + ' [[opacity=".5"||]]', f'<rect width="4" height="4" fill="{B}"/>') + line('marker-end="url(#m)"', "M0 30H30", w=7))
    a("two-subpaths-start-once", mark(std, f'<rect width="4" height="4" fill="{B}"/>') + line('[[marker-start="url(#m)"||]]', "M15 15H50M15 45H50", w=6))
    a("move-is-a-mid-vertex", mark(std, f'<rect width="4" height="4" fill="{B}"/>') + line('[[marker-mid="url(#m)"||]]', "M15 15H45M15 45H45", w=5))
    a("over-stroke", mark('markerWidth="2" markerHeight="2" refX="1" refY="1"', f'<rect width="2" height="2" fill="{B}"/>') + line('[[marker-start="url(#m)"||]]', "M30 0V60", w=20).replace("M30 0V60", "M30 30V60"))
    a("paint-order-markers-first", mark(std, f'<rect width="4" height="4" fill="{B}"/>') + f'<path d="M30 30V60" stroke="{R}" stroke-width="24" stroke-linecap="square" marker-start="url(#m)" [[paint-order="markers stroke"||]]/>'.replace('"24"', '"14"'))
    a("with-transformed-content", mark(std, f'<rect width="2" height="2" fill="{B}" [[transform="scale(2)"||]]/>') + line('marker-end="url(#m)"', "M0 30H30", w=10))


for table in (shapes, strokes, dashes, units, clips, masks, markers):
    table()
