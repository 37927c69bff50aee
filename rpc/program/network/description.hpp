// The page that describes the interface, under /description beside a front end's own; with a try-out where the ledger is a
// demonstration in memory, and then also where nothing else stands at the root. Made when it is first asked for.
#pragma once

#include "rpc/access/pages.hpp"
#include "rpc/program/opened.hpp"
#include "rpc/protocol/envelope.hpp"

namespace limbledger::rpc {

// `in_memory`: the demonstration that is tried on; null: the page describes alone.
void add_description(const OpenedLedger* in_memory, const Service& service, Pages& pages);

}  // namespace limbledger::rpc
