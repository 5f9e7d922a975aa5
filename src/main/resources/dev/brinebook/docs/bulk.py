# SPDX-License-Identifier: Apache-2.0
"""Sends a table (.csv) or a list (.ndjson) of any length, writes the answers beside it, and continues after any break.

    python3 bulk.py ADDRESS IN OUT [KEY]

ADDRESS is that of a list, with its parameters, such as
http://localhost:8080/v1/bulk/compensateHardness?unknownColumns=pass. Started again with the same OUT, it continues.
"""
import http.client
import itertools
import re
import sys
import time
import urllib.error
import urllib.request

ROWS, BYTES, ATTEMPTS = 5_000, 8_000_000, 10  # of one request; failures one after the other
LONGEST = 65_536  # bytes of a row
CELL = rb'(?:"[^"]*(?:""[^"]*)*"[ \r]*|[^",;\t\n][^,;\t\n]*)?'
WHOLE = re.compile(rb"(?:\xef\xbb\xbf)?(?:%s[,;\t])*%s\n?" % (CELL, CELL))
NUMBER = re.compile(rb'^(\{"line":)?(\d+)')
BUSY = b"/problems/overloaded"


def rows(lines, table, longest):
    """Rows of a table, which go on where a quote is open; of a list, lines.

    If a quote is not closed within the longest row, its first line alone is a row: so the service counts too.
    """
    lines, ahead = iter(lines), []
    while ahead or (ahead := list(itertools.islice(lines, 1))):
        row, used = ahead[0], 1
        whole = not table or WHOLE.fullmatch(row)
        while not whole and len(row) <= longest:
            if used == len(ahead):
                ahead += itertools.islice(lines, 1)
            if used == len(ahead):
                break
            row, used = row + ahead[used], used + 1
            whole = b'"' in ahead[used - 1] and len(row.rstrip(b"\n")) <= longest and WHOLE.fullmatch(row)
        taken = used if whole else 1
        yield b"".join(ahead[:taken])
        del ahead[:taken]


def answers_of(lines, table):
    """Whole rows or lines of answers, each with the number of what it answers; the header row answers the first."""
    for row in rows(lines, table, float("inf")):
        if not row.endswith(b"\n") or table and not WHOLE.fullmatch(row):
            return
        number = NUMBER.match(row)
        yield int(number[2]) if number else 1, row


def ask(address, key, media_type, body, start):
    """The answers to a piece from one of its rows on, as they come."""
    headers = {"Content-Type": media_type, "Accept": media_type}
    if key:
        headers["Authorization"] = "Bearer " + key
    address += ("&" if "?" in address else "?") + f"answer=afterUpload&from={start}"
    with urllib.request.urlopen(urllib.request.Request(address, body, headers), timeout=300) as answers:
        for number, row in answers_of(answers, media_type == "text/csv"):
            if NUMBER.match(row) and BUSY in row:
                return
            yield number, row


def answered(address, key, media_type, piece, start, last):
    """The same, asked again after a break until there is an answer to the last row."""
    attempt = 0
    while start <= last:
        pause = min(60, 2 ** attempt)
        try:
            for number, row in ask(address, key, media_type, b"".join(piece), start):
                yield number, row
                start, attempt = number + 1, 0
        except urllib.error.HTTPError as refused:
            if refused.code not in (429, 503):
                sys.exit(f"{refused.code} {refused.read().decode()}")
            pause = int(refused.headers.get("Retry-After") or pause)
        except (OSError, http.client.HTTPException) as broken:
            print(f"broken off: {broken}", file=sys.stderr)
        if start <= last:
            attempt += 1
            if attempt > ATTEMPTS:
                sys.exit(f"gave up after {ATTEMPTS} attempts; start again to continue")
            time.sleep(pause)


def pieces(source, header, skip):
    """The rows behind a header, some at a time, each time with the number of the first."""
    piece, number, size = [], len(header), 0
    for number, row in enumerate(source, len(header) + 1):
        if number <= skip:
            continue
        piece.append(row if row.endswith(b"\n") else row + b"\n")
        size += len(row)
        if len(piece) == ROWS or size > BYTES:
            yield number - len(piece) + 1, header + piece
            piece, size = [], 0
    if piece:
        yield number - len(piece) + 1, header + piece


def already(path, table):
    """The number of the last row that OUT answers; what is not a whole answer is cut off."""
    last = whole = 0
    with open(path, "a+b") as out:
        out.seek(0)
        for last, row in answers_of(out, table):
            whole += len(row)
        out.truncate(whole)
    return last


def main(address, source_path, out_path, key=None):
    if re.search(r"[?&](mode=check|only=)", address):
        sys.exit("a dry run and faulty rows alone have no answer to every line: send them with another client")
    table = source_path.endswith(".csv")
    media_type = "text/csv" if table else "application/x-ndjson"
    done = already(out_path, table)
    with open(source_path, "rb") as source, open(out_path, "ab") as out:
        sent = rows(source, table, LONGEST)
        header = [next(sent, b"")] if table else []
        for first, piece in pieces(sent, header, done):
            before = first - 1 - len(header)  # rows of the file in front of the piece
            start = 1 if table and done == 0 else 1 + len(header)
            last = max((i for i, row in enumerate(piece, 1) if row.strip()), default=0)
            for number, row in answered(address, key, media_type, piece, start, last):
                out.write(NUMBER.sub(lambda at: (at[1] or b"") + str(number + before).encode(), row))
                done = number + before
            out.flush()


if __name__ == "__main__":
    if len(sys.argv) not in (4, 5):
        sys.exit(__doc__)
    main(*sys.argv[1:])
