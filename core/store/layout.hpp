// The tables of the store's file, as SQLite is given them once. A change here is a new `layout_version`.
#pragma once

#include <cstdint>

namespace limbledger::store {

constexpr int layout_version = 3;           // user_version of the file
constexpr std::int64_t newest_at = INT64_MAX;  // 9223372036854775807 in the texts
constexpr int application_id = 0x4c494d42;  // "LIMB"

constexpr const char* layout_sql = R"sql(
-- The store's file, version 3. The entries are the truth; everything else can be made from them, but for what is small.
-- `chain` is a local number for (clinic, replica), so that each key is short and rows of one replica lie together.
CREATE TABLE chains(chain INTEGER PRIMARY KEY, clinic BLOB NOT NULL, replica BLOB NOT NULL, UNIQUE(clinic, replica));

-- Several hashes at one seq are the branches of a fork. `state` 0: whole body; else the body's hash stands in its place.
-- At the greatest number there is (newest_at) stand the chain's newest heads, one a branch, `hash` its byte: behind the last entry and on its
-- page, so that a commit changes one page.
CREATE TABLE entries(
  chain INTEGER NOT NULL, seq INTEGER NOT NULL, hash BLOB NOT NULL, state INTEGER NOT NULL,
  header BLOB NOT NULL, body BLOB NOT NULL,
  PRIMARY KEY(chain, seq, hash)) WITHOUT ROWID;

-- Part 0: the clinic. Part 2: meta. (Part 1: newest heads, before version 3.)
CREATE TABLE small(part INTEGER NOT NULL, name BLOB NOT NULL, value BLOB NOT NULL, PRIMARY KEY(part, name)) WITHOUT ROWID;

CREATE TABLE kept_heads(
  chain INTEGER NOT NULL, seq INTEGER NOT NULL, hash BLOB NOT NULL, signature BLOB NOT NULL,
  PRIMARY KEY(chain, seq, hash)) WITHOUT ROWID;

-- Entries that do not join yet: neither folded nor receipted.
CREATE TABLE parked(
  replica BLOB NOT NULL, seq INTEGER NOT NULL, hash BLOB NOT NULL, state INTEGER NOT NULL,
  header BLOB NOT NULL, body BLOB NOT NULL,
  PRIMARY KEY(replica, seq, hash)) WITHOUT ROWID;
)sql";

// The key id is the last 16 bytes of the header; plain entries have none and are not listed. A run says that entries of this key may lie
// there, never that all between are of it. The newest run of a chain goes on to its end, `last` is NULL: what is recorded in the exam
// at hand then changes one page less, and the list of an exam is a row and not one for each of its entries.
constexpr const char* runs_sql = R"sql(
CREATE TABLE runs(kid BLOB NOT NULL, chain INTEGER NOT NULL, first INTEGER NOT NULL, last INTEGER, PRIMARY KEY(kid, chain, first)) WITHOUT ROWID;
)sql";

constexpr const char* runs_from_entries_sql = R"sql(
INSERT INTO runs SELECT kid, chain, min(seq), max(seq) FROM (
    SELECT kid, chain, seq, row_number() OVER (PARTITION BY chain ORDER BY seq) - row_number() OVER (PARTITION BY chain, kid ORDER BY seq) AS run
    FROM (SELECT substr(header, 17) AS kid, chain, seq FROM entries WHERE seq < 9223372036854775807) WHERE kid <> zeroblob(16))
  GROUP BY kid, chain, run ON CONFLICT DO UPDATE SET last=max(last, excluded.last);
)sql";

// Version 1 had an index of all entries by key in the place of runs.
constexpr const char* drop_index_sql = "DROP INDEX entries_kid;";

// Versions 1 and 2 had the newest heads in part 1 of `small`, the replica's name and the branch in one.
constexpr const char* newest_from_small_sql = R"sql(
INSERT INTO chains(clinic, replica) SELECT (SELECT value FROM small WHERE part=0), substr(name, 1, 16) FROM small WHERE part=1
  ON CONFLICT DO NOTHING;
INSERT INTO entries SELECT c.chain, 9223372036854775807, substr(s.name, 17), 0, x'', s.value
  FROM small s JOIN chains c ON c.replica=substr(s.name, 1, 16) WHERE s.part=1;
DELETE FROM small WHERE part=1;
)sql";

}  // namespace limbledger::store
