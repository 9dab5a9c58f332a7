// The statements of SqlStore, prepared once a connection.
#pragma once

#include "core/store/line_proof.h"
#include "core/store/sql_store.h"

namespace ullage::store
{

struct SqlStore::Statements {
    explicit Statements(Connection& on) : connection(on), proof(on) {}
    const Connection& connection;
    LineProof proof;

    Statement make(const char* sql) const { return {connection, QString::fromLatin1(sql)}; }
    // Entries `e` with what tells whether they are what was entered.
    Statement proven(const char* which) const { return {connection, LineProof::select(which)}; }

    Statement newest = make("SELECT seq, hash FROM entry ORDER BY seq DESC LIMIT 1");
    Statement putAction =
        make("INSERT INTO action (mode, what, subject, of, seat) VALUES (?, ?, ?, ?, ?)");
    Statement putEntry = make("INSERT INTO entry (type, id, action, batch, kind, at_ms, volume_ml, "
                              "films, run, voids, person, film, from_batch, to_batch, item, "
                              "container, body, hash) "
                              "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    Statement putBatch =
        make("INSERT INTO batch (id, name, solution, mixed_ms, ended_ms, entries, hash) "
             "VALUES (?, ?, ?, ?, ?, ?, ?) "
             "ON CONFLICT (id) DO UPDATE SET name = excluded.name, solution = excluded.solution, "
             "mixed_ms = excluded.mixed_ms, ended_ms = excluded.ended_ms, "
             "entries = excluded.entries, hash = excluded.hash");
    Statement dropBatch = make("DELETE FROM batch WHERE id = ?");
    Statement bodyOf = make("SELECT body FROM entry WHERE type = ? AND id = ?");
    Statement definitions =
        proven("e.type IN ('solution', 'vessel', 'development-time') ORDER BY e.seq");
    Statement hashOf =
        make("SELECT CAST(type AS BLOB), CAST(id AS BLOB), hash FROM entry WHERE seq = ?");
    Statement event = proven("e.type = 'event' AND e.id = ?");
    // With what the batch keeps of its entries, read in the same moment.
    Statement eventsOf =
        make("SELECT CAST(entry.body AS BLOB), entry.batch, CAST(entry.type AS BLOB), "
             "CAST(entry.id AS BLOB), batch.entries, batch.hash, entry.seq FROM entry "
             "LEFT JOIN batch ON batch.id = entry.batch WHERE entry.batch = ? ORDER BY entry.seq");
    Statement batchEntries = make("SELECT entries FROM batch WHERE id = ? AND NOT EXISTS "
                                  "(SELECT 1 FROM entry WHERE entry.batch = ?)");
    // A can's line names a batch too, and has none.
    Statement filledWith =
        make("SELECT batch FROM entry WHERE from_batch = ?1 AND batch IS NOT NULL UNION "
             "SELECT batch FROM entry WHERE to_batch = ?2 AND batch IS NOT NULL");
    Statement unpaired =
        make("SELECT 1 FROM entry AS heir WHERE from_batch IS NOT NULL AND batch IS NOT NULL "
             "AND NOT EXISTS (SELECT 1 FROM entry AS donor WHERE donor.to_batch = heir.batch "
             "AND donor.batch = heir.from_batch AND donor.at_ms = heir.at_ms "
             "AND donor.volume_ml = heir.volume_ml) LIMIT 1");
    Statement eventsOfAction = proven("e.action = ? AND e.type = 'event' ORDER BY e.seq");
    Statement eventsWith =
        proven("e.type = 'event' AND e.action = (SELECT one.action FROM entry AS one "
               "JOIN action ON action.id = one.action WHERE one.type = 'event' AND one.id = ? "
               "AND action.mode <> ?) ORDER BY e.seq");
    Statement film = proven("e.type = 'film' AND e.id = ?");
    Statement marksOf = proven("e.film = ? AND e.kind = 'film-mark' ORDER BY e.seq");
    Statement marksOfAction = proven("e.action = ? AND e.type = 'film-mark' ORDER BY e.seq");
    Statement batch = make("SELECT id, name, solution, mixed_ms, ended_ms FROM batch WHERE id = ?");
    // Mixed at one moment: in the order in which the mixings were entered.
    Statement batchesInUse =
        make("SELECT id, name, solution, mixed_ms, ended_ms FROM batch "
             "WHERE mixed_ms <= ?1 AND (ended_ms IS NULL OR ended_ms > ?2) ORDER BY mixed_ms, "
             "(SELECT max(seq) FROM entry WHERE entry.batch = batch.id AND kind = 'mixed')");
    Statement batches =
        make("SELECT id, name, solution, mixed_ms, ended_ms FROM batch "
             "WHERE mixed_ms <= ? ORDER BY mixed_ms, "
             "(SELECT max(seq) FROM entry WHERE entry.batch = batch.id AND kind = 'mixed')");
    Statement mixings = proven("e.kind = 'mixed' AND e.type = 'event' "
                               "AND e.at_ms BETWEEN ? AND ? ORDER BY e.at_ms, e.seq");
    Statement has = make("SELECT 1 FROM entry WHERE type = ? AND id = ?");
    Statement hasRun = make("SELECT 1 FROM entry WHERE run = ? AND type = 'event' LIMIT 1");
    Statement actions = make("SELECT id, mode, what, subject, of, seat FROM action "
                             "ORDER BY id DESC LIMIT ?");
    Statement note = make("SELECT CAST(value AS BLOB), sum FROM note WHERE key = ?");
    Statement dropNote = make("DELETE FROM note WHERE key = ?");
    Statement notes = make("SELECT key, value FROM note WHERE instr(key, ?) = 1");
};

} // namespace ullage::store
