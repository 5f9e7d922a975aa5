# SPDX-License-Identifier: Apache-2.0
"""Sends a table (.csv) or a list (.ndjson) of any length, writes the answers beside it, and continues after any break.

    python3 bulk.py ADDRESS IN OUT [KEY]

ADDRESS is that of a list, with its parameters, such as
http://localhost:8080/v1/bulk/compensateHardness?unknownColumns=pass. Started again with the same OUT, it continues.
"""
import http.client
import re
import sys
import time
import urllib.error
import urllib.request

LINES, BYTES, ATTEMPTS = 5_000, 8_000_000, 10  # of one request; failures one after the other
NUMBER = re.compile(rb'^(\{"line":)?(\d+)')
BUSY = b"/problems/overloaded"


def ask(address, key, media_type, body, start):
    """The answers to a piece from one of its lines on, as they come."""
    headers = {"Content-Type": media_type, "Accept": media_type}
    if key:
        headers["Authorization"] = "Bearer " + key
    address += ("&" if "?" in address else "?") + f"answer=afterUpload&from={start}"
    with urllib.request.urlopen(urllib.request.Request(address, body, headers), timeout=300) as answers:
        for line in answers:
            number = NUMBER.match(line)
            if not line.endswith(b"\n") or number and BUSY in line:
                return
            yield int(number[2]) if number else 1, line


def answered(address, key, media_type, lines, start, last):
    """The same, asked again after a break until there is an answer to the last line."""
    attempt = 0
    while start <= last:
        pause = min(60, 2 ** attempt)
        try:
            for number, line in ask(address, key, media_type, b"".join(lines), start):
                yield number, line
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
    """The lines of a file behind its first ones, some at a time, each with the number of its first line."""
    piece, number, size = [], 0, 0
    for number, line in enumerate(source, 1):
        if number <= skip:
            continue
        piece.append(line if line.endswith(b"\n") else line + b"\n")
        size += len(line)
        if len(piece) == LINES or size > BYTES:
            yield number - len(piece) + 1, header + piece
            piece, size = [], 0
    if piece:
        yield number - len(piece) + 1, header + piece


def already(path):
    """The number of the last line that OUT answers; what is not a whole line is cut off."""
    last = 0
    with open(path, "a+b") as out:
        out.seek(0)
        whole = 0
        for line in out:
            if line.endswith(b"\n"):
                whole += len(line)
                number = NUMBER.match(line)
                last = int(number[2]) if number else 1
        out.truncate(whole)
    return last


def main(address, source_path, out_path, key=None):
    if re.search(r"[?&](mode=check|only=)", address):
        sys.exit("a dry run and faulty rows alone have no answer to every line: send them with another client")
    table = source_path.endswith(".csv")
    media_type = "text/csv" if table else "application/x-ndjson"
    done = already(out_path)
    with open(source_path, "rb") as source, open(out_path, "ab") as out:
        header = [source.readline()] if table else []
        source.seek(0)
        for first, lines in pieces(source, header, max(done, len(header))):
            before = first - 1 - len(header)  # lines of the file in front of the piece
            start = 1 if table and done == 0 else 1 + len(header)
            last = max((i for i, line in enumerate(lines, 1) if line.strip()), default=0)
            for number, line in answered(address, key, media_type, lines, start, last):
                out.write(NUMBER.sub(lambda at: (at[1] or b"") + str(number + before).encode(), line))
                done = number + before
            out.flush()


if __name__ == "__main__":
    if len(sys.argv) not in (4, 5):
        sys.exit(__doc__)
    main(*sys.argv[1:])
