# The profile's form.

profile-changed-since = The file has changed since this page read it. Load it again; what you entered here is kept and goes in on top.
profile-not-writable = This service may not write the file. Download it instead.
profile-not-written = The file could not be written: { $reason }. It is as it was.
profile-no-such-place = The profile has no place { $pointer } for this.
profile-taken = { $value } is taken.
profile-also-removed = Taken out with it: { $things }.
profile-also-removed-part = { $thing ->
    [tiles] tiles read with { $name }
   *[shade] shade { $name }
}
typical-job = { $job ->
    [shelf] A plain shelf, { $length } × { $width }, { job-surface }, collected
    [basin-top] A basin top, { $length } × { $width }, { job-surface }, delivered
   *[kitchen] A kitchen of two tops with a hob, { job-surface }, fitted
}
job-surface = { $surface ->
    [as-cast] as cast
    [honed] honed
   *[polished] polished
}
first-step = { $step ->
    [you] Who you are
    [table] Your casting table
    [money] Your hour, markup, tax and deposit
    [concrete] Your concrete
    [materials] What you buy
    [lifting] What you lift, and how a young slab is moved
    [hours] Your people, your days and how long it takes you
    [looks] Shades, finishes and sealers that you offer
   *[delivery] Where you deliver
}
# A key of the file, in a sentence on the form.
form-key = “{ $label }”{ $word ->
    [true] : yes
    [false] : no
   *[none] { "" }
}
