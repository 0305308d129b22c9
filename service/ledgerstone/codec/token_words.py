"""The preset dictionary of the tokens' compressor (zlib), which keeps links short.

A token can only be opened with the dictionary it was compressed with, so this text never changes:
another dictionary would need another salt in ``tokens``. The likeliest words are last.
"""

from __future__ import annotations

PRESET_DICTIONARY = (
    b'"corner_radii":{"front-left":"","front-right":"","back-left":"","back-right":""'
    b'{"kind":"polygon","points":[{"x":"","y":""}'
    b'"turn_degrees":45.0,"open_to":"front","heat":true,"size_from":"template-to-follow"'
    b'"reliefs":[{"kind":"drainer","outline":,"depth":"","at":{"x":"100 mm","y":"100 mm"}'
    b'"grooves":8,"fall":"recess","rebate"'
    b'"drop":{"depth":"","mitred":true},"drip":true'
    b'{"kind":"l-shape","notch":{"corner":"back-right","length":"front-left"'
    b'"joins":[{"one":{"slab":0,"side":"right"},"other":{"slab":1,"side":"left"},"gap":"2 mm"}]'
    b'"rests":{"kind":"ledges","lines":[{"start":{"x":"0 mm","y":"0 mm"},"end":{"x":'
    b'"rests":{"kind":"legs","at":[{"x":"50 mm","y":"50 mm"}],"pad":"'
    b'"rests":{"kind":"frame","sides":["front","back","left","right"],"width":"30 mm"'
    b'"rests":{"kind":"ends","depth":"100 mm"},"fixed":true,"full"'
    b'"use":"upstand","splashback","end-panel","shelf","table","hearth","sill"'
    b'"size_from":"between-walls","over-units"'
    b'"place":"wet-room","quantity":2'
    b'{"kind":"round","diameter":"900 mm"}'
    b'{"kind":"slot","length":"300 mm","width":"40 mm","centre":{"x":"'
    b'"standing":"quotation","rev":"A","turn":{"from":"","into":""},"ceiling":"","people":'
    b'"lift":{"width":"","depth":"","height":"","door":"","rated_kg":'
    b'"delivery":{"kind":"own-van","fitted","floor":'
    b'{"slabs":[{"outline":{"kind":"rectangle","length":"1800 mm","width":"600 mm",'
    b'"corner_radius":"10 mm"},"thickness":"40 mm","shade":{"name":"graphite"},'
    b'"finish":{"surface":"as-cast","sealer":"satin"},"label":"worktop","cutouts":['
    b'{"kind":"rectangle","label":"hob","centre":{"x":"1200 mm","y":"300 mm"},'
    b'"length":"560 mm","width":"490 mm","rim":"covered"},'
    b'{"kind":"circle","label":"basin","centre":{"x":"500 mm","y":"270 mm"},'
    b'"diameter":"360 mm"},{"kind":"circle","label":"tap","centre":{"x":"980 mm","y":"505 mm"},'
    b'"diameter":"35 mm","rim":"covered"}],'
    b'"edges":{"front":{"profile":"round","size":"3 mm"},"left":{},"right":{},'
    b'"front":{"profile":"bevel","size":"5 mm"},"back":{"profile":"wall"}},'
    b'"place":"outdoors","rests":{"kind":"units","units":[{"width":"600 mm"},'
    b'{"width":"800 mm","for":"hob"},{"width":"600 mm","for":"gap"},'
    b'{"width":"650 mm"},{"width":"800 mm","for":"basin"}],"overhang":{"front":"20 mm"}}}],'
    b'"delivery":{"kind":"collect"},"delivery":{"kind":"pallet","doorway":"762 mm","steps":0},'
    b'"needed_by":"2027-01-01"},"area":null,"area":"Around Wethermoor","issued":"2026-12-01",'
    b'"until":"2026-12-31","rev":"","cur":"GBP","net":"500.00","tax":"100.00",'
    b'"total":"600.00","deposit":"240.00","by":"2026-","ready":"2026-12-","standing":"estimate",'
    b'"print":"0123456789abcdef","ref":"'
)
