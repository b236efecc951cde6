"""Where a renderer draws another picture than the one expected, and the sentence of a standard that says which is right.

Each entry: the renderers, the drawings (a star stands for whatever follows), the section, and the sentence.
"""

CLIP_ON_CLIP = "A clipPath element can be clipped itself by another clipPath: its own clip-path property applies to it, and the result is the intersection."
CLIP_RULE = "The clip-rule property applies only to graphics elements that are contained within a clipPath element."
LENGTH = "pathLength is the author's computation of the total length of the path, in user units; it calibrates the user agent's own distance-along-a-path calculations."
STROKE_WIDTH = "strokeWidth: markerWidth, markerHeight and the contents of the marker have values in a coordinate system in which a single unit equals the size in user units of the current stroke width of the element; it is the initial value."
EM = "em: equal to the computed value of the font-size property of the element on which it is used."
INVALID = "If the attribute does not conform to the syntax described above, the polyline is rendered up to, but not including, the first wrong value."

REASONS = [
    ("librsvg jsvg", "clips/clipped-child clips/clipped-child-* clips/nested clips/nested-* clips/use-child-clipped clips/use-of-clipped", "CSS Masking 1, 6.1", CLIP_ON_CLIP),
    ("librsvg jsvg", "clips/rule-each-child-its-own", "CSS Masking 1, 6.3", CLIP_RULE),
    ("jsvg", "clips/rule-evenodd clips/rule-evenodd-star clips/rule-in-style clips/rule-inherited clips/rule-through-use", "CSS Masking 1, 6.3", CLIP_RULE),
    ("jsvg", "clips/hidden-child-counts-not clips/child-without-display-counts-not", "CSS Masking 1, 6.1", "The raw geometry of each child element exclusive of rendering properties contributes to the clipping path, except that children with display none or visibility hidden do not."),
    ("jsvg", "clips/in-style-quoted", "CSS Values 4, 4.5", "A URL is a pointer to a resource; url() may hold it quoted or unquoted."),
    ("jsvg", "clips/on-markers", "SVG 2, 13.7.4", "Clipping, masking, opacity and filters of the marked element apply to its fill, stroke and markers together."),
    ("jsvg", "clips/on-moved-use", "SVG 2, 5.6.2", "The x and y properties define an additional transformation translate(x, y) to be applied to the use element, after any transformations specified with other properties."),
    ("jsvg", "clips/transform-on-clippath clips/transforms-on-all", "CSS Masking 1, 6.1", "The transform property on the clipPath element applies to the coordinate system of its contents."),
    ("jsvg", "clips/units-box-of-curve", "SVG 2, 8.10", "The object bounding box is the bounding box that contains only an element's geometric shape, tight to it."),
    ("jsvg", "clips/units-box-of-use clips/use-child clips/use-child-xlink", "SVG 2, 5.6.2", "The x and y properties define an additional transformation translate(x, y) to be applied to the use element."),
    ("librsvg", "dashes/pathlength-circle dashes/pathlength-ellipse dashes/pathlength-line dashes/pathlength-path dashes/pathlength-path-curved dashes/pathlength-poly* dashes/pathlength-rect dashes/pathlength-offset dashes/pathlength-shorter dashes/pathlength-and-percent", "SVG 2, 9.6.1", LENGTH),
    ("chromium", "dashes/pathlength-circle dashes/pathlength-ellipse dashes/pathlength-path-curved", "SVG 2, 9.6.1", LENGTH),
    ("librsvg jsvg", "dashes/pathlength-zero-counts-not", "SVG 2, 9.6.1", "A value of zero is valid and must be treated as a scaling factor of infinity."),
    ("jsvg", "dashes/pathlength-negative-counts-not", "SVG 2, 9.6.1", "A negative value is an error."),
    ("jsvg", "dashes/ellipse-starts-right dashes/rect-rounded-starts-after-corner", "SVG 2, 10.2 and 10.4", "Its equivalent path begins at the point that the section names, from where dashes start."),
    ("jsvg", "dashes/offset-far-negative dashes/offset-with-odd-number-negative", "SVG 2, 13.5.6", "Negative values of stroke-dashoffset are valid; the pattern repeats in both directions."),
    ("jsvg", "dashes/offset-percent", "SVG 2, 13.5.6", "Percentages refer to the size of the current viewport, as for stroke-dasharray."),
    ("jsvg", "dashes/with-markers-whole", "SVG 2, 13.7.2", STROKE_WIDTH),
    ("librsvg", "units/Q-*", "CSS Values 4, 6.2", "Q: quarter-millimeters, 1Q = 1/40th of 1cm."),
    ("chromium", "units/ex", "CSS Values 4, 6.1.1", "In the cases where it is impossible or impractical to determine the x-height, a value of 0.5em must be assumed."),
    ("jsvg", "units/em-of-em units/em-of-inherited-size", "CSS Values 4, 6.1.1", EM),
    ("librsvg chromium", "strokes/non-scaling", "SVG 2, 8.13", "The resulting visual effect of non-scaling-stroke is that the stroke width is not dependant on the transformations of the element and zoom level: it is that of the host coordinate space, here drawn at twice its size."),
    ("librsvg chromium", "strokes/non-scaling-in-style", "SVG 2, 8.13", "The resulting visual effect of non-scaling-stroke is that the stroke width is not dependant on the transformations of the element and zoom level: it is that of the host coordinate space, here drawn at twice its size."),
    ("librsvg chromium jsvg", "strokes/thick-circle-has-no-hole", "SVG 2, 13.5.8", "The stroke shape is the union of the lines of length stroke-width that are perpendicular to the path and centred on it, at every position along it."),
    ("jsvg", "strokes/cap-butt-on-curve strokes/cap-round-on-curve strokes/cap-square-on-curve", "SVG 2, 13.5.4", "A cap is perpendicular to the tangent of the path at its end, and the stroke's sides are parallel to the path."),
    ("jsvg", "strokes/cap-round-on-closed-dot", "SVG 2, 13.5.4", "A subpath of zero length, M 30 30 z included, is stroked with round and square caps."),
    ("jsvg", "strokes/width-zero", "SVG 2, 13.5.3", "A zero value causes no stroke to be painted."),
    ("jsvg", "shapes/rect-width-zero", "SVG 2, 10.2", "A computed value of zero for either dimension disables rendering of the element."),
    ("librsvg jsvg", "shapes/points-without-commas", "SVG 2, 9.7.1", "points: number pairs, separated by comma-wsp, which may be left out before a sign."),
    ("librsvg", "shapes/polygon-odd-number-left", "SVG 2, 10.7", INVALID),
    ("librsvg jsvg", "markers/move-is-a-mid-vertex", "SVG 2, 13.7.1", "marker-mid is drawn on every vertex other than the first and last vertex of the whole path, moveto commands included."),
    ("librsvg jsvg", "markers/orient-angle-turn", "CSS Values 4, 7.1", "turn: turns. There is 1 turn in a full circle."),
    ("librsvg jsvg", "markers/orient-auto-closed", "SVG 2, 13.7.5", "On a closed subpath the direction at its start and end is the bisector of the directions of its first and last segment."),
    ("librsvg jsvg", "markers/viewbox-slice", "SVG 2, 13.7.6", "Overflow is hidden by the user agent style sheet: a marker's contents are clipped to its markerWidth and markerHeight."),
    ("librsvg chromium jsvg", "markers/ref-center markers/ref-left-top markers/ref-right-bottom", "SVG 2, 13.7.2", "refX and refY: left, center and right, top, center and bottom are 0%, 50% and 100% of the reference box."),
    ("chromium jsvg", "markers/ref-percent", "SVG 2, 13.7.2", "Percentages of refX and refY are relative to the viewBox's width and height, or to markerWidth and markerHeight if there is none."),
    ("jsvg", "markers/context-fill markers/context-stroke", "SVG 2, 13.2", "context-fill and context-stroke: use the paint value of fill or stroke from a context element, for markers the element that references them."),
    ("jsvg", "markers/on-scaled-path", "SVG 2, 13.7.4", "The coordinate system of a marker's contents has its origin at the vertex and takes on the user space of the marked element."),
    ("jsvg", "markers/all markers/display-none-on-marker-counts-not markers/end markers/in-sheet markers/inherited markers/inherits-from-marker-not-path markers/mid markers/mid-on-each markers/on-line markers/on-poly* markers/opacity-on-marker markers/orient-angle markers/orient-angle-deg markers/orient-angle-grad markers/orient-angle-negative markers/orient-angle-rad markers/orient-angle-unit markers/orient-auto markers/orient-auto-arc markers/orient-auto-mid-halves-angle markers/orient-auto-on-curve markers/orient-auto-start markers/orient-auto-start-* markers/over-stroke markers/overflow-* markers/own-colours markers/paint-order-markers-first markers/ref-default-0 markers/ref-negative markers/ref-x markers/ref-y markers/shorthand-* markers/size-* markers/start markers/two-subpaths-start-once markers/units-default-stroke-width markers/units-stroke-width markers/viewbox-origin markers/viewbox-wide-is-centred markers/with-transformed-content markers/without-stroke-paint", "SVG 2, 13.7.2", STROKE_WIDTH),
    ("chromium", "masks/clip-on-mask masks/mask-on-mask", "CSS Masking 1, 7", "mask and clip-path apply to container elements, of which mask is one."),
    ("librsvg", "units/fill-box-of-group units/percent-of-fill-box", "CSS Transforms 1, transform-box", "The reference box that transform-origin and percentages of transform refer to is that which transform-box names: fill-box is the object bounding box."),
    ("librsvg jsvg", "units/fill-box-without-origin units/length-of-origin-in-fill-box units/origin-in-fill-box units/origin-in-view-box", "CSS Transforms 1, transform-box", "The reference box that transform-origin and percentages of transform refer to is that which transform-box names: fill-box is the object bounding box."),
    ("librsvg jsvg", "units/em-without-font-size units/rem-without-font-size", "CSS Fonts 4, font-size", "The initial value is medium, which the standard leaves to the program: 16 px, in browsers and for rem (common practice, no source)."),
]
