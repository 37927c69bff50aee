#include "rpc/program/logging.hpp"

#include "rpc/program/problem.hpp"

#include <spdlog/sinks/null_sink.h>
#include <spdlog/sinks/rotating_file_sink.h>
#include <spdlog/logger.h>

namespace limbledger::rpc {

namespace {

constexpr std::size_t file_bytes_max = std::size_t{1} << 20U;
constexpr std::size_t files_kept = 2;

}  // namespace

Log::Log(const std::string& path, bool read_only) {
  if (read_only) {
    logger_ = std::make_shared<spdlog::logger>("limbledger", std::make_shared<spdlog::sinks::null_sink_mt>());
    return;
  }
  try {
    logger_ = std::make_shared<spdlog::logger>("limbledger", std::make_shared<spdlog::sinks::rotating_file_sink_mt>(path, file_bytes_max, files_kept));
  } catch (const spdlog::spdlog_ex&) {
    throw Problem(ExitCode::unavailable, path + ": the log cannot be opened\n  what to do: free some space, or see who owns the folder");
  }
  logger_->set_pattern("%Y-%m-%dT%H:%M:%S.%eZ %l %v", spdlog::pattern_time_type::utc);
  logger_->flush_on(spdlog::level::info);
  // A full disk must not make the program talk about it on every call.
  logger_->set_error_handler([](const std::string&) {});
}

Log::~Log() = default;

// Joined here: a text that the log has to format costs more to compile than all of this file.
void Log::started(std::string_view how) { logger_->log(spdlog::level::info, "started " + std::string(how)); }
void Log::stopped(std::string_view why) { logger_->log(spdlog::level::info, "stopped " + std::string(why)); }

void Log::call_failed(std::string_view method, std::string_view code, std::string_view incident) {
  std::string line = std::string(method.empty() ? "-" : method) + " " + std::string(code);
  if (incident.empty()) {
    logger_->log(spdlog::level::info, line);
  } else {
    logger_->log(spdlog::level::err, line + " incident " + std::string(incident));
  }
}

}  // namespace limbledger::rpc
