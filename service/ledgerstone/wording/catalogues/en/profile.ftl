# The profile's form.

profile-changed-since = The file has changed since this page read it. Load it again; what you entered here is kept and goes in on top.
profile-not-writable = This service may not write the file. Download it instead.
profile-not-written = The file could not be written: { $reason }. It is as it was.
profile-no-such-place = The profile has no place { $pointer } for this.
typical-job = { $job ->
    [shelf] A plain shelf, 900 × 250 mm, collected
    [basin-top] A basin top, 1200 × 520 mm, delivered
   *[kitchen] A kitchen of two tops with a hob, fitted
}
