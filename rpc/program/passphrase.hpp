// A passphrase from the terminal, without echo, or from a file descriptor: one line, its end taken off. Never from an
// argument or the environment, where others could see it, and never from a standard input that carries messages.
#pragma once

#include <string>

namespace limbledger::rpc {

// All throw Problem (usage) when there is no terminal, or nothing can be read.
[[nodiscard]] std::string read_passphrase(int descriptor);
[[nodiscard]] std::string ask_passphrase(const std::string& question);
// Asks twice; refuses what is short or not the same.
[[nodiscard]] std::string ask_new_passphrase();
// 12 characters at least: the keyring can be guessed at by whoever holds a copy of the file.
void check_new_passphrase(const std::string& passphrase);
[[nodiscard]] bool has_terminal();

// Overwrites the text before it is let go.
void wipe(std::string& text);

}  // namespace limbledger::rpc
