"""What survives: the book, the doors that it is kept behind, and what it holds.

From the outside in:

    library     records in, records out; one commit a verb; files out, files in
    export      everything, or one job, as a file; its form is described there
    incoming    a file that came in, read whole or refused
    sense       what a record may say
    together    what records must be to each other
    merge       a file's records beside those of the book
    codec       a record as a document of the book, and back; nothing else gets through
    migrations  how the book of an older app becomes today's
    book        TinyDB's storage: sealed slots, a last good copy, damage set aside
    rows        the documents in memory, which nobody can change under the book
    seal        sequence, length and checksum around a document
    door        what the book asks of a place to keep bytes; memory is the simplest
    doors       the door that this browser has: files or IndexedDB, behind one key
    key         one tab at a time: who has the book, who asks for it
    errors      Busy, Full, Damaged, Newer, Unreadable and its kinds

Only `browser`, `opfs_door`, `indexed_door` and `doors` need a browser; the rest runs anywhere.
"""
