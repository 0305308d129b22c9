"""A customer's message becomes a draft order: what was said, what was taken, what to ask.

`answer.read_enquiry` runs the passes below, the first first. Each package is one pass or a part of
one; it imports none of those after it (``tests/design/test_enquiry_passes.py`` holds that).

1. ``text`` reads the message's bytes and gives its `Mail` (decoded text), its `Parts` (who wrote
   which lines, the newest first) and each part's `Sentence` objects, in which sizes are atoms.
   ``words`` are the tables of both languages that this pass and all later ones look words up in.
2. ``sentence`` reads one sentence without regard to those before it, and gives its `Mention`
   objects (what it names) and its `Measure` objects (sizes, with the words that say what they
   measure). Nothing outside the sentence is read or changed.
3. ``walk`` goes through the parts, the oldest first since newer words correct older ones, and
   through their tables and sentences as they stand (`walk.whole_message`). For each sentence,
   `walk.walk.Walker.read` in this order:

   a. sets aside the sizes that are none of a slab of ours (`sentence.scope`, ``ownership.owners``);
   b. replaces what the sentence corrects (``ownership.corrections``, ``differences``);
   c. finds the slab that it goes on with, or begins a new one (``referents.new_slabs``,
      ``slab_of_sentence``, ``known_slabs``);
   d. takes up each name and gives each size to a thing (``referents.named``, ``measured``), a place
      to its opening (``places``), a leg to its L (``shapes``);
   e. writes the sizes of each thing as claims by their key, length, width and so on
      (``scene.size_assigner``);
   f. reads what is said without numbers, and what is the same as another's (``shapes.relations``,
      ``ownership.sameness``).

   Two records alone are changed here: `scene.said.SaidOrder` (every piece and opening, each with
   all sizes claimed for it, and the sizes set aside with why), which later passes read; and
   `scene.focus.Focus` (the current piece, opening and leg), which only the walk knows.
   When all is read, `scene.weighing` lets of several readings of a slab's sizes the one stand that
   is plainly meant: all of them weighed at once, by their words, their magnitude, and what is named
   nearest. Where the margin is small the readings stay, and are asked.
   An L whose sizes are not whole is then read once more, by the leg that each clause is about
   (`shapes.leg_clauses`).
4. ``values`` reads `SaidOrder`: the newest claims become one value, or a `Doubt` where two readings
   remain (`values.resolve`, the only pass that changes `SaidOrder` after the walk). A slab told
   again is one with that before it (`values.restated`), and one that newer pieces add up to is
   none (`values.pieces_instead`). It gives a `PieceFound` for each slab.
5. ``wishes`` and ``sender`` read the text again, not the scene's sizes, and give look, edges,
   delivery, day and customer.
6. ``facts`` puts 1 to 5 together as `MessageFacts`, and decides whether it is an enquiry at all.
7. ``draft`` reads `MessageFacts` and changes nothing in it but a doubt that it takes a reading of.
   It writes the order as said (`draft.slabs`), the entries beside it (read, doubtful, missing), the
   order completed with all that was taken (`draft.proposal`), what was left out and why, and what
   was not read.
"""

from ledgerstone.enquiry.answer import read_enquiry

__all__ = ["read_enquiry"]
