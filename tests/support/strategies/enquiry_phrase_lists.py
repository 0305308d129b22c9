"""Phrases that enquiries are composed of. Braces stand for sizes: {l} long, {w} deep, {t} thick."""

from typing import Final

SLAB_NAMES: Final = (
    "worktop", "kitchen worktop", "counter top", "bar top", "desk top", "vanity top", "island top",
    "slab", "table top", "bench top",
)  # fmt: skip
GREETINGS: Final = (
    "Hello, ", "", "Hi Tom,\n\n", "Dear Sirs\n\n", "Good morning,\n\nI hope you are well. ",
    "Afternoon. ", "Hi there,\n\nI got your address from a neighbour. ",
)  # fmt: skip
CLOSINGS: Final = (
    "\n\nMany thanks\nJo Frampton", " Thanks, Jo", "\n\nJo", "\n\nKind regards,\nJo Frampton\n01632 960114",
    "\n\nWhat would it cost?\n\nJo", " How much would that be?\nJo",
)  # fmt: skip
SLABS: Final = (
    "could you price a {name} {l} long, {w} deep and {t} thick?",
    "Please quote for a {name}: length {l}, depth {w}, thickness {t}.",
    "I need a price for a {name}. It is {l} long. It is {w} front to back. It is {t} thick.",
    "We'd like a {name} that's {l} long by {w} deep, and {t} thick.",
    "I'm after a {name}. It should be {l} in length with a depth of {w}, and I would like it {t} in thickness.",
    "Please price this for us.\n\n{name}\nLength: {l}\nDepth: {w}\nThickness: {t}\n",
    "Please price a {name}.\n- {l} long\n- {w} deep\n- {t} thick\n",
    "We want a {name}. Dimensions: {l} (length) x {w} (depth) x {t} (thickness).",
    "I want a {name}, {t} thick, {l} by {w}.",
    "Can I get a quote on a {t} thick {name}, {l} x {w}?",
    "I'd like a quote for one {name}. The length is {l}, the depth is {w} and the thickness is {t}.",
    "We are after a {name}. It needs to be {l} long and {w} from front to back. Thickness wise we thought {t}.",
    "Would you be able to make a {name}? The finished length would be {l} and the finished depth {w}. We want it {t} thick.",
    "I am looking for a {name} to go along one wall. The run is {l} and it comes out {w} from the wall. I'd like {t} for the thickness.",
    "{name} wanted: {l} L x {w} D x {t} T.",
    "Please price a {name} of {l} by {w}. I think {t} would be about right for the thickness, so let's say {t}.",
    "The {name} we need is {l} long, {w} wide and {t} thick.",
    "How much for a {name}? Size {l} x {w}, {t} thick.",
    "Looking for a {name}, {l} in length, {w} in depth, {t} in thickness.",
    "Hoping you can price a {name} for me - {l} x {w} x {t}.",
    "We've measured up for the {name} and make it {l} long and {w} deep. {t} thick please.",
    "We need a {name} made. Its length will be {l}; its depth {w}; its thickness {t}.",
    "Could you let me have a price for a {name} measuring {l} by {w}? It should be {t} thick.",
    "I'd like a {name} please. Going from left to right it's {l}, from front to back it's {w}. It wants to be {t} thick.",
    "Price for a {name} please: L {l}, W {w}, T {t}.",
    "We want to replace our laminate with a concrete {name}. Overall size {l} x {w} and thickness {t}.",
)  # fmt: skip
ASIDES: Final = (
    "", "", "", "We'd like it in mid grey with a matt seal.",
    "The room itself is 4.2 m by 3.6 m.",
    "The old top is 1925 x 585 and will go in the skip.",
    "Our fridge is 597 wide, so no need to worry about that.",
    "The units underneath are 1888 long and 577 deep.",
    "It goes on a frame that is 877 high.",
    "Delivery to HR0 7XX please, two steps up.",
    "Our budget is around £1,250.",
    "The doorway is 762 wide and the hall is 912.",
    "My husband thinks 25 would be enough but he isn't paying.",
    "There will be two of us here to help carry.",
    "The builder quoted me £640 for the plumbing, so I'm careful now.",
    "We moved here in 2019 and have been saving since.",
    "The window above it is 1190 wide.",
    "There's a chimney breast that sticks out 345 to the left of it.",
    "Call me on 07700 900123 after 6.",
    "I'm told you're 12 miles away.",
    "The back goes against a wall and the front edge should have a 5 mm bevel.",
    "My neighbour's is 2222 long and looks lovely.",
    "The ceiling is only 2.1 m high.",
    "I need it by 12 May 2027.",
    "We have 3 children and 2 dogs so it has to be tough.",
)  # fmt: skip
OPENING_NAMES: Final = ("sink", "hob", "basin", "undermount sink", "drop-in sink", "bar sink", "cooktop")
OPENING_SIZES: Final = (
    "There is a {what} with a cut-out of {a} x {b}",
    "It needs a cut-out for a {what}, {a} by {b}",
    "It needs one opening for a {what}. The template says {a} by {b}, and the {a} runs along the front",
    "There will be a {what} in it. Its cut-out is {a} x {b}, with the {a} along the length",
    "One {what}, cut-out {a} x {b} ({a} left to right)",
    "The {what} needs a hole {a} wide by {b} front to back",
    "The hole for the {what} is {a} long and {b} deep",
    "We have a {what} already; according to the leaflet the cut-out should be {a} x {b}. The {a} is the side-to-side",
    "{what} cut-out: {a} x {b}",
    "A {what} goes in it. The paper template measures {a} by {b}",
    "There's a {what} to be let in. The hole has to be {a} wide and {b} from front to back",
    "I need a hole for the {what}: width {a}, depth {b}",
    "It gets a {what}. The cutout is {a} long by {b} front to back",
    "Into that goes a {what} which wants an opening of {a} x {b}",
    "Please cut it out for a {what}, {a} along the front and {b} front to back",
)  # fmt: skip
HOLE_SIZES: Final = (
    "There's a round {what}, the hole is {d} in diameter",
    "It needs a round hole for the {what}, {d} across",
    "One round {what}, cut-out {d} diameter",
    "There is a round {what} whose cut-out is {d} in diameter",
    "The {what} is round and needs a {d} hole",
    "A round {what} goes in it. Hole size {d} dia",
    "We'd like a circular hole of {d} for the {what}",
    "There's to be a round {what}. Diameter of the hole: {d}",
)  # fmt: skip
BETWEEN: Final = (
    ", its centre {place}.", ". Its centre is {place}.", ". The centre of it is {place}.",
    ". Centre: {place}.", ". The middle of it should be {place}.", ", with its middle {place}.",
    ". It's centred {place}.", ". I have marked the centre at {place}.", ". Please put the centre {place}.",
    ". The middle goes {place}.", ", centre {place}.",
)  # fmt: skip
PLACES: Final = ("{x} and {y}", "{x}, {y}", "{x} and {y}", "{x} & {y}", "{x} / {y}")
CENTRED: Final = (
    "in the middle from left to right and {y}", "halfway along and {y}",
    "centred left to right and {y}", "in the middle of the length, {y}",
)  # fmt: skip
SIDES: Final = {
    "left": ("{} from the left", "{} in from the left-hand end", "{} from the left end", "{} from LH end",
             "{} from the left side", "{} from the left edge"),
    "right": ("{} from the right", "{} in from the right-hand end", "{} from the right end", "{} from RH end",
              "{} from the right edge"),
    "front": ("{} from the front", "{} from the front edge", "{} back from the front", "{} back from the front edge"),
    "back": ("{} from the back", "{} from the back edge", "{} forward of the back edge", "{} off the back wall"),
}  # fmt: skip
TAPS_BEHIND: Final = (
    "Tap hole {d}, behind it on the same centre line, {b} from the back.",
    "There's one tap hole, {d} across, directly behind, its centre {b} from the back edge.",
    "The tap hole is {d} in diameter; its centre is {b} from the back and in line with the centre of that.",
    "Behind it there should be a {d} hole for the mixer; its centre is {b} from the back edge and in line with the middle of it.",
    "One {d} tap hole centred behind it, {b} from the back edge to the centre.",
    "It also needs a {d} hole for the tap, straight behind and {b} in from the back.",
)  # fmt: skip
HOLES: Final = ()
