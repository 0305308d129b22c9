# What stands on the files that moulds are cut by.

cut-mirrored = { $name }: true size, in { $lengths ->
    [in] inches
   *[mm] mm
}. Mirrored as cast: seen looking down into the mould, the face underneath.
cut-kerf = The kerf is not applied: set your tool's offset. Sides lie flat under each mould; check one size before you cut.
