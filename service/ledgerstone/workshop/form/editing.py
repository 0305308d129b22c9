"""Changes to a profile's text that leave everything else as it is written: comments, order, blanks.

Each change replaces, adds or takes out the very characters that it is about; what a value is
written as comes in as TOML. Where a key or a table is left out, its line becomes a comment, as the
starting profile has it, and a comment that is such a line is used again.

A library that keeps comments, tomlkit 0.15, was tried in its place: it keeps them, but a comment
stays behind where its item is taken out and stands above the next one, it does not use a left-out
line again, and it gives no line numbers, for which ``lines`` would stay.
"""

from __future__ import annotations

import re
from typing import Final

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.form.comments import is_remark
from ledgerstone.workshop.form.placed_text import NoSuchPlace, PlacedText, within
from ledgerstone.workshop.reading.lines import Header, KeyLines, LineSpan
from ledgerstone.workshop.standing import KEYS, key_of

_KEY: Final = re.compile(r"# [a-z_0-9]+ = ")
_SAMPLE: Final = re.compile(
    r'# \w+ = (?:"…"|\["…"\]|"?1(?:\.0+)?(?: [^"]*")?|true|"[\w-]+")\s*(?:#|$)'
)


def _is_sample(line: str) -> bool:
    """Whether a commented-out key has the value with which a profile is started."""
    return _SAMPLE.match(line) is not None


class ProfileDraft(PlacedText):
    """The text of a profile, and what may be changed in it."""

    # --- values -----------------------------------------------------------------------------

    def put(self, path: KeyPath, toml: str) -> None:
        """Write a value at a key, adding the key if its table does not have it.

        Raises
        ------
        NoSuchPlace
            The table that the key belongs to is not there either.
        """
        if any(within(path, other) or within(other, path) for other in self._pending):
            self.settle()
        if path in self.found().values:
            self._pending[path] = toml
            return
        self.settle()
        self.insert(path, toml)

    def leave_out(self, path: KeyPath) -> None:
        """Turn a key, or a table with all that is in it, into a comment; an item is taken out.

        Raises
        ------
        NoSuchPlace
        """
        self.settle()
        pair = self.found().pairs.get(path)
        if pair is not None and self._text[self.line_start(pair[0]) : pair[0]].strip() == "":
            self._comment_out((self.line_start(pair[0]), self.line_end(pair[1])))
            self._take_word(path)
        elif path in self.found().values:
            self.take_from_line(path)
            self._take_word(path)
        elif self.headers_within(path):
            headed = self.region(path)
            if isinstance(path[-1], int):
                self._take_out(path, headed)
            else:
                self._comment_out(headed)
        else:
            raise NoSuchPlace(path)

    # --- tables -----------------------------------------------------------------------------

    def add(self, path: KeyPath, sample: list[str]) -> None:
        """Add a table that is left out, or one more item to a list; what it needs is empty.

        Parameters
        ----------
        sample
            The table's lines, its header first, each key after it.
        """
        self.settle()
        count = self.count(path)
        if count:
            self._add_item((*path, count - 1), sample)
        elif path in self.found().values:
            self.replace(self.found().values[path], f"[{{ {', '.join(sample[1:])} }}]")
        elif not self._uncomment(sample):
            self._append(path, sample)

    def _add_item(self, last: KeyPath, sample: list[str]) -> None:
        """Write one more item after a list's last one."""
        found = self.found()
        if last in found.values:
            start, end = found.values[last]
            before = found.values.get((*last[:-1], int(last[-1]) - 1))
            joint = self._text[before[1] : start] if before else ", "
            self.replace((end, end), f"{joint}{{ {', '.join(sample[1:])} }}")
            return
        end = self.region(last)[1]
        self.replace((end, end), "\n\n" + "\n".join(sample))

    def _append(self, path: KeyPath, sample: list[str]) -> None:
        """Write a new table after the one that it belongs to, else at the end."""
        around = path[:-1]
        if around and self.headers_within(around):
            at = self.region(around)[1]
        elif len(path) == 1:
            at = len(self._text.rstrip())
        else:
            raise NoSuchPlace(path)
        self.replace((at, at), "\n\n" + "\n".join(sample))

    def _uncomment(self, sample: list[str]) -> bool:
        """Use the lines of a table that is commented out; a sample there is emptied."""
        lines = self._text.splitlines(keepends=True)
        header = rf"# {re.escape(sample[0])}\s*(#|$)"
        i = next((i for i, line in enumerate(lines) if re.match(header, line)), None)
        if i is None:
            return False
        lines[i] = lines[i].removeprefix("# ")
        keys = [k for k in range(i + 1, self._commented_to(lines, i)) if _KEY.match(lines[k])]
        is_sample = all(_is_sample(lines[k]) for k in keys)
        needed = {line.partition(" = ")[0]: line for line in sample[1:]}
        for k in keys:
            line = lines[k].removeprefix("# ")
            own = needed.get(line.partition(" = ")[0])
            if own is not None and is_sample:
                (pair,) = KeyLines(line).pairs.values()
                lines[k] = own + line[pair[1] :]
            elif not is_sample:
                lines[k] = line
        self.replace((0, len(self._text)), "".join(lines))
        return True

    @staticmethod
    def _commented_to(lines: list[str], header: int) -> int:
        """Where the comments of a commented-out table end, or its inner table's begin."""
        after = range(header + 1, len(lines))
        ends = (k for k in after if not lines[k].startswith("#") or lines[k].startswith("# ["))
        return next(ends, len(lines))

    # --- one place ---

    def insert(self, path: KeyPath, toml: str) -> None:
        """Add a key: in the place of its comment, else after its table's other keys.

        Raises
        ------
        NoSuchPlace
            Its table is not there, and cannot be added.
        """
        table, key = path[:-1], path[-1]
        header = self.header(table)
        if header is not None:
            line = f"\n{key} = {toml}"
            if key == key_of(table):
                end = self.line_end(header.span[1])
                self.replace((end, end), line)
            elif not self._use_comment(header, str(key), toml):
                end = self.keys_end(header)
                self.replace((end, end), line)
        elif self.written(table).startswith("{"):
            start, end = self.found().values[table]
            inside = self._text[start + 1 : end - 1].strip()
            joint = ", " if inside else ""
            self.replace((start, end), f"{{ {inside}{joint}{key} = {toml} }}")
        elif len(table) == 1 and not self.headers_within(table):
            self._append(table, [f"[{table[0]}]", f"{key} = {toml}"])
        else:
            raise NoSuchPlace(path)

    def _use_comment(self, header: Header, key: str, toml: str) -> bool:
        """Write a key in place of a commented-out one; the comment beside it stays."""
        end = self.body_end(header)
        body = self._text[header.span[1] : end]
        found = re.search(rf"^#[ \t]*{key}[ \t]*=.*$", body, re.MULTILINE)
        if found is None:
            return False
        line = found[0].lstrip("# \t")
        pair = KeyLines(line).pairs[(key,)]
        start = header.span[1] + found.start()
        rest = line[pair[1] :].rstrip("\r")
        self.replace((start, start + len(found[0].rstrip("\r"))), f"{key} = {toml}{rest}")
        return True

    def _comment_out(self, span: LineSpan) -> None:
        lines = self._text[span[0] : span[1]].split("\n")
        marked = (
            line if line.startswith("#") or not line.strip() else f"# {line}" for line in lines
        )
        self.replace(span, "\n".join(marked))

    def take_line(self, path: KeyPath) -> None:
        """Remove a key, with its line if the line has nothing else."""
        start, end = self.found().pairs[path]
        if self._text[self.line_start(start) : start].strip():
            self.take_from_line(path)
        else:
            self.replace((self.line_start(start), self.line_end(end) + 1), "")

    def _take_word(self, path: KeyPath) -> None:
        """Remove the confirmation of a key that its table no longer has."""
        word = (*path[:-1], key_of(path[:-1]), path[-1])
        if word in self.found().values:
            self.take_from_line(word)

    def take_from_line(self, path: KeyPath) -> None:
        """Remove one item of an inline list or table, with its comma."""
        found = self.found()
        spans = found.pairs if path in found.pairs else found.values
        start, end = spans[path]
        own = self._own_lines(path, (start, end))
        if own is not None:
            self.replace(own, "")
            return
        beside = sorted(s for p, s in spans.items() if p[:-1] == path[:-1] and len(p) == len(path))
        at = beside.index((start, end))
        if at > 0:
            self.replace((beside[at - 1][1], end), "")
        elif len(beside) > 1:
            self.replace((start, beside[1][0]), "")
        elif spans is found.pairs and path[-2] in KEYS:
            self.take_line(path[:-1])
        else:
            around = found.values[path[:-1]]
            empty = "{}" if spans is found.pairs else "[]"
            self.replace(around, empty)

    def _own_lines(self, path: KeyPath, span: LineSpan) -> LineSpan | None:
        """The lines of a list's item that shares them with no other, its comments among them."""
        start, end = self.line_start(span[0]), self.line_end(span[1])
        around = self.found().values[path[:-1]]
        rest = self._text[span[1] : end].strip().removeprefix(",").strip()
        is_alone = around[0] < start and end < around[1] and not self._text[start : span[0]].strip()
        if not is_alone or (rest and not rest.startswith("#")):
            return None
        return self._with_comments(start), self._text.index("\n", end) + 1

    def _with_comments(self, start: int) -> int:
        """Where the comments right above a line begin."""
        while start and is_remark(self._text[self.line_start(start - 1) : start]):
            start = self.line_start(start - 1)
        return start

    def _take_out(self, path: KeyPath, region: LineSpan) -> None:
        """Remove an item's lines, and the blank lines on one side of it."""
        start, end = region
        stays = path[-1] == 0 and self.count(path[:-1]) > 1  # what is said above is of the list
        if not stays:
            start = self._with_comments(start)
        if self._text.startswith(
            "[", self.line_end(end) + 1
        ):  # what stands above is the next one's
            end = max(start, self._with_comments(self.line_end(end) + 1) - 1)
        before = self._text[:start].rstrip("\r\n")
        if stays:
            after = self._text[end:]
            self.replace((start, end + len(after) - len(after.lstrip("\r\n"))), "")
        else:
            self.replace((len(before), end), "")
