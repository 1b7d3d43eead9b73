#pragma once

/// The row of an entry by its id, as a piece of SQL: the one way to look for an id.
///
/// Ids are random, so in an index of them all each new entry has a page to itself. Index entry_id
/// keeps them by age: a million rows at a time have a part of it for themselves, and what is new
/// goes to the newest, which stays in memory. A search begins there; every cellar of up to a
/// million entries has no other. Where the device and its number are known too, index entry_chain
/// answers at once.

/// Which part of the index a row is in: 2^20 rows have one.
#define SPILE_ID_PART(n) n " >> 20"
/// What the index has of an id; whoever searches by it compares the whole id, too.
#define SPILE_ID_BEGINNING(id) "substr(" id ", 1, 8)"

/// `n` of the entry with this id, NULL if there is none. `id` is a column or a numbered parameter
/// (it stands there twice).
#define SPILE_ENTRY_NUMBER(id) \
    "(WITH RECURSIVE id_part(part) AS (SELECT " SPILE_ID_PART("max(n)") " FROM entry UNION " \
    "ALL SELECT part - 1 FROM id_part WHERE part > 0) SELECT looked.n FROM id_part CROSS "   \
    "JOIN entry AS looked ON " SPILE_ID_PART("looked.n") " = part AND "                      \
    SPILE_ID_BEGINNING("looked.id") " = " SPILE_ID_BEGINNING(id) " AND looked.id = " id      \
    " LIMIT 1)"
