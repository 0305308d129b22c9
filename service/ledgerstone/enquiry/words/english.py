"""English words of enquiries, by what they name. Each line is a list, parted by commas."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

# Words that give a size its role: what stands after it, and what names it before.
ROLES: Final = MappingProxyType(
    {
        "long": "from left wall to right wall, from the left wall to the right wall, from wall to"
        " wall, wall to wall, from one wall to the other, from one end to the other,"
        " long, lg, from end to end, from left to right, from side to side, length, in"
        " length,"
        " of length, lengthways, lengthwise, end to end, overall"
        " length",
        "wide": "wide, wd, width, in width, of width, width ways, broad",
        "deep": "out from it, out from the wall, out into the room, out from the back wall,"
        " deep, dp, profound, depth, projection, front to back, in depth, of depth,"
        " front-to-back, wall to front, from wall to front, from the wall to the front, from"
        " front to"
        " back, back to front, from back to front",
        "thick": "thick, thk, in thickness, of thickness, thickness, thick all over",
        "high": "high, tall, in height, of height, upright",
        "dia": "dia, diam, in diameter, of diameter, diameter, diametre, ø, dia.",
        "across": "across, round, across the middle, circular",
        "radius": "radius, rad, from the middle to the edge, from the centre to the edge, from the"
        " center to the edge, from middle to edge, from centre to edge, from center to edge, middle"
        " to edge, centre to edge, center to edge, from the middle out, from the middle to the"
        " outside, from the centre to the outside, from the centre to the rim, from the middle to"
        " the rim, from the centre out to the edge, from the middle out to the edge",
        "square": "sq, square",
        "apart": "centres, centers, past, beyond, apart, between, clear, inside, centres apart,"
        " over each end,"
        " each end, off the"
        " floor, off the ground, spare, overhang, away, below, down the road, miles, of space,"
        " overlap, each side, either end, bigger, smaller, longer, wider, thicker, shorter, deeper,"
        " extra, more, less, out, too long, too short, higher, lower, off, up, over"
        ", between the, widespread, spread, spacing, centerset, outside diameter",
        "x": "l r, l to r, left right,"
        " across the front, across the width, across the length, of the width, of the"
        " length, on the length, on its length, on the width, on its"
        " width, side to side, left to right, the long way, along,"
        " along the length, along the wall,"
        " long way, lengthways, in the long direction, going left to right, parallel to the front,"
        " along the front, running left to right, parallel to the front edge, along the front"
        " edge, runs along, running along, goes along, going along, lengthways, along it, along"
        " the worktop, along the top, along"
        " the back wall, wide, long, in the length, along the slab, along the back",
        "y": "f b, f to b, b to f, front back,"
        " of the depth, front to back, front-to-back, from front to back, deep, back to"
        " front, from back to front",
    }
)
LABELS: Final = MappingProxyType(
    {
        "long": "length, lg, lenght, lenth, long, lengths, l, run, len, total length, overall"
        " length,"
        " left to right"
        ", from left to right, side to side, end to end",
        "wide": "width, wd, wide, widths, w, breadth",
        "deep": "from the back wall to the front edge, from the back wall to the front, from the"
        " wall"
        " to the front edge, from the front edge to the wall, from the front edge to the back wall,"
        " from the front to the wall, from front to wall, back wall to front edge, from the back"
        " edge to the front edge, from the front edge to the back edge, profound, profundity,"
        " deepness, deepth, dept, depht, depth, deep, d, depths,"
        " projection,"
        " projecting, projects,"
        " comes"
        " forward, come out, comes out, sticks out,"
        " stands out, how far it comes out, how far out it comes,"
        " how far it sticks out, how deep it is, front to back, from front to back, back to"
        " front, from"
        " back to front, from the wall to the front, the wall to the front edge, wall to front"
        " edge, the back to the front edge, from the frame to the front, from the window"
        " to the front, from the"
        " glass to the front, from the plaster to the front, frame to front, from wall to front,"
        " wall to front, from the"
        " back to the front, from the front to the back",
        "thick": "how thick it is, thickness, thicknes, thikness, thick, thk, t, thckness, th",
        "high": "height, high, tall, h",
        "dia": "diameter, dia, diam, ø, φ, fi, diametre",
        "radius": "radius",
        "size": "size, sizes, dimensions, dims, measures, measurements, l x w x t, l x w"
        ", l x d x t,"
        " finished size, overall size",
        "quantity": "qty, quantity, pieces, pcs, number, no, no off, how many, count, off",
        "piece": "piece, item, what, position, pos, description, part, product, component, room",
        "cutouts": "cut outs, cutouts, cut-outs, holes, cut out, cutout, openings",
    }
)
FROM: Final = (
    "from, off, from the, forward of, forward from, in from, out from, away from, back from,"
    " up from, down from, on from, along from,"
    " short of"
    ", in off"
)
SIDES: Final = MappingProxyType(
    {
        "left": "left, lh, lhs, lhe, left-hand, lefthand, l/h",
        "right": "right, rh, rhs, rhe, right-hand, righthand, r/h",
        "front": "front, frt, near edge, front edge, bottom, bottom edge",
        "back": "back, bk, rear, wall, behind",
    }
)
MARKS: Final = MappingProxyType(
    {
        "not": "leave out the, leave off the, leave out that, do without the, remove the,"
        " scrap the, cancel the, drop the, skip the, lose the, omit the,"
        " ignore, forget, not, no, without, none, never, nothing, don't, doesn't, isn't,"
        " aren't, shan't,"
        " won't, didn't, wouldn't, neither, nor, don’t, doesn’t, isn’t, aren’t, shan’t, won’t,"
        " didn’t, needn't, needn’t, nowt, dont, nil, haven't, haven’t, can't, can’t",
        "instead": "instead of, rather than, and not, in place of, as opposed to",
        "correct": "after all,"
        " won't take it, won’t take it, won't fit, won’t fit, sorry, correction,"
        " actually, pardon, meant, i mean, should read,"
        " scratch that, strike that, hold on, change of plan, changed my mind, changed our minds,"
        " change of mind, bear with me, forget that, ignore that, cancel that, new measurements,"
        " new measurement, re-measure, measured it again, measured wrong, mismeasured,"
        " revised, revision, changed, change, rang back, rang again, phoned again, called"
        " again, hang on, excuse me, wrong, mistake"
        ", update,"
        " updated, oops, scrap that, scrap, instead, go with, no longer, measured again"
        ", remeasured,"
        " re-measured, re measured, in fact, apologies, typo, my error, i mistyped, make"
        " that, wait, on second thoughts, second thoughts, again properly, properly this"
        " time, it turns out, turns out, amend, amended, amendment, new size, now measures, i look"
        " now, has measured, called back, phoned back, correct that, on reflection, edit",
        "old": "old, existing, current, present one, previous, former, neighbour's, neighbor's,"
        " sister's, friend's, mum's, brother's, tiled one, last one, last lot",
        "gone": "we shipped over, we brought over, we brought with us, left behind, was made by,"
        " of the last owners, from the last owners, of the previous owners, is on its way out,"
        " laminate one, formica one, wooden one, timber one, oak one, granite one,"
        " slate one, marble one, steel one, quartz one, plastic one, pine one, quote was for,"
        " price was for, estimate was for, quoted for, i'd said, i had"
        " said, i'd written, i had written, i'd given, i'd told you,"
        " previously, that was the, that was a, which was a, it was a, that was an, that was"
        " only, original enquiry"
        " was, originally, original order was, first plan was,"
        " seen better days, past its best, had its day, falling apart, freestanding,"
        " free-standing, free standing, one now, one there now,"
        " one in there, at the moment, there now, presently, currently, in there now,"
        " being replaced,"
        " replaces, replacing, to be replaced, coming out, coming off, at present, we have now,"
        " already there, already have, already has, got now, used to be, ripped out, next door,"
        " i have now, have now, we've got now, i've got now, has gone yellow,"
        " that's there, that is there, which is there, that's in, one we have, one i have, one we"
        " had, going in the skip, go in the skip, that we have, in place now"
        ", in at present",
        "new": "new, new one, a concrete one, one in concrete, with concrete, by concrete,"
        " replacement, i want, we want, i'd like, we'd like, would like, need,"
        " make it, ours, mine",
        "also": "also, another, second, as well, plus, other, further, additional, extra, a"
        " matching, matching, third, and a, and one, one more",
        "about": "imagine, i guess, suppose, presumably, perhaps, maybe, probably, something like,"
        " in the region of, somewhere around, about, roughly, approx, approximately, around,"
        " circa, ca, or so, ish, give or"
        " take, nearly, some",
        "middle": "middle, middles, centre, center, centres, centers, mid point,"
        " midpoint, ctr, c/l, mid",
        "centred": "centred, centered, central, centrally, dead centre, dead center, in the centre,"
        " in the center, in the exact centre, in the exact center, in the middle, in the exact"
        " middle, middle of each, centre of each, center of each, in center, in the half,"
        " at half, at the"
        " half, on the half, on the centre line left to right, on the center line left to right,"
        " on the centreline left to right, on the centerline left to right,"
        " on the centreline of the"
        " top, on the centreline of the slab, on the centre line front to back,"
        " on the center line front to back, on the"
        " centreline front to back, on the centerline front to back, the very middle, very"
        " middle, very centre, very center,"
        " exactly in the middle, exact centre, exact center, dead central, bang in the"
        " middle, through the centre, through the center, through the middle, halfway, half way,"
        " halfway along, half way along, right in the middle, smack in the middle, exactly central,"
        " in the dead centre, that's the middle, that is the middle, which is the middle,"
        " so the middle, in centre, in middle, mid way, midway, center it, centre it"
        ", slap bang"
        " in the middle, centring, in its centre, in its center, in its middle, back centre, back"
        " center, rear centre, rear center, centre back, center back, centre rear, center rear,"
        " middle of the top, middle of the slab, middle of the worktop, centre of the top,"
        " centre of the slab, centre of the worktop, center of the top, center of the slab,"
        " middle of the back, centre of the back, center of the back, middle of the rear, centre"
        " of the rear, center of the rear, middle of the front, centre of the front, center of the"
        " front",
        "behind": "sink cl, basin cl, cl sink, cl of sink, cl basin, c l sink, centreline of sink,"
        " in the same axis, on the same axis, same axis,"
        " level with, level w, middle of the sink, centre of the sink,"
        " center of the sink, middle of the"
        " basin, centre of the basin, center of the basin, middle of the bowl, centre of the"
        " bowl, center of the bowl, behind, in line with, same centre line, same center line, on"
        " its centre line,"
        " on its center line, on the same centre line, on the same center line, in line, centre"
        " line, center line, centreline, centerline, centrelines, centerlines,"
        " on the centreline of, lined up with, same line"
        " as, aligned with, same line, on the same line",
        "sideways": "either side, to either side, each side of the basin, each side of the sink,"
        " each side of"
        " centre, each side of center, each side of the centre, each side of the center,"
        " each side of it, both sides of it, either side of it, one each side, one either side,"
        " one on each side, one to each side",
        "both": "both, each, all, both of them, all of them, all three",
        "shown": "goes up underneath, goes in underneath, put from below, put from under,"
        " fixed from under,"
        " undermount, undermounted, under mount, under-mount, under mounted, set under,"
        " goes underneath, sits underneath, mounted from under, from under,"
        " fixed from beneath, fixed from below, mounted under, under mounting, fully under, from"
        " beneath, from underneath, sits under, undermounting, under the concrete, under the top,"
        " under the slab, under-mounted, under counter, undercounter, hangs under",
        "covered": "put over the top, put on top, placed on top, placed over the top, like a bowl,"
        " stands on top, standing on top, stand on top, stood on top, perches on top,"
        " bowl on top, basin on top, sink on top,"
        " inset, drop in, drop-in, dropin, sit on, sit-on, sits on, overmount"
        ", over mount,"
        " top mount, topmount, top-mount, top mounted, surface mounted, lies on top, lay on,"
        " sits on top, rim sits on, drops in, hides its own edge, edge of the hole is hidden,"
        " hangs from its rim, self rimming, self-rimming, countertop basin, on top of it, lay-on,"
        " standing on, rests on its rim, lies on, stands on it, sit on top, sitting on top, inset"
        " type, glass sits on, drop-ins, hides the edge, covers the edge, flange covers,"
        " dropped in, from above, let in, with a lip, set on top, built in,"
        " vessel, counter top bowl, countertop bowl, counter-top bowl, counter-top basin,"
        " hangs over, rim sits over, sits over, goes on top",
        "round": "round, circular, circle, disc, oval",
        "lshape": "the l one, it's the l, is the l, its the l, is an l, as an l, in an l, l one,"
        " l piece, l bit, one l, l shaped, l shape, l-shaped, l-shape, lshape, an l, it's an l,"
        " it’s an l, l worktop, shape of an l, l counter, l-top, corner worktop, l top,"
        " corner desk, corner desktop, corner counter, corner countertop",
        "pieces": "in 2 pcs, in two pcs, in two pieces, in two halves, two pieces the same,"
        " in 2 pieces"
        ", two equal pieces,"
        " two equal halves, in two equal",
        "price": "price, prices, quote, quotation, cost, costs, estimate, how much, pricing"
        ", charge,"
        " ballpark, budget",
        "want": "want, would like, i'd like, we'd like, i’d like, we’d like, looking for, need,"
        " after, interested in, could you make, can you make, could you do, please make, order, to"
        " price, please quote, require, wanting",
    }
)
NUMBERS: Final = MappingProxyType(
    {
        word: value
        for value, word in enumerate(
            [
                "zero",
                "one",
                "two",
                "three",
                "four",
                "five",
                "six",
                "seven",
                "eight",
                "nine",
                "ten",
                "eleven",
                "twelve",
                "thirteen",
                "fourteen",
                "fifteen",
                "sixteen",
                "seventeen",
                "eighteen",
                "nineteen",
            ]
        )
    }
    | {
        word: 10 * tens
        for tens, word in enumerate(
            ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], start=2
        )
    }
    | {"a": 1, "an": 1, "half": 0.5}
)
