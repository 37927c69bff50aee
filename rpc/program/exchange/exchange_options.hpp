// The commands by which the devices of a clinic come together: hub, join, exchange, parcel.
#pragma once

#include "rpc/program/options.hpp"

namespace CLI {
class App;
}

namespace limbledger::rpc {

void add_exchange(CLI::App& app, Options& options);

}  // namespace limbledger::rpc
