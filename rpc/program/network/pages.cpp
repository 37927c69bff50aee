#include "rpc/program/network/pages.hpp"

#include "rpc/program/folder.hpp"
#include "rpc/program/problem.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <system_error>
#include <utility>

namespace limbledger::rpc {

namespace {

constexpr std::size_t pages_bytes_max = std::size_t{32} << 20U;

constexpr std::array<std::pair<std::string_view, std::string_view>, 17> page_types{{
    {".css", "text/css; charset=utf-8"},
    {".ftl", "text/plain; charset=utf-8"},
    {".html", "text/html; charset=utf-8"},
    {".ico", "image/x-icon"},
    {".jpeg", "image/jpeg"},
    {".jpg", "image/jpeg"},
    {".js", "text/javascript; charset=utf-8"},
    {".json", "application/json"},
    {".map", "application/json"},
    {".mjs", "text/javascript; charset=utf-8"},
    {".png", "image/png"},
    {".svg", "image/svg+xml"},
    {".txt", "text/plain; charset=utf-8"},
    {".wasm", "application/wasm"},
    {".webmanifest", "application/manifest+json"},
    {".webp", "image/webp"},
    {".woff2", "font/woff2"},
}};

[[nodiscard]] bool is_plain(std::string_view path) {
  return path.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789._-/") == std::string_view::npos;
}

[[nodiscard]] std::string lower(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return out;
}

// Whether a tag has an attribute of this name, or (of handlers: onclick) one that begins so.
[[nodiscard]] bool has_attribute(std::string_view tag, std::string_view begins, bool whole) {
  for (std::size_t at = tag.find(begins); at != std::string_view::npos; at = tag.find(begins, at + 1)) {
    const std::size_t equals = tag.find_first_not_of("abcdefghijklmnopqrstuvwxyz", at + begins.size());
    const bool ends = equals != std::string_view::npos && tag[equals] == '=' && (!whole || equals == at + begins.size());
    if (ends && at > 0 && std::string_view(" \t\n\r\"'").find(tag[at - 1]) != std::string_view::npos) {
      return true;
    }
  }
  return false;
}

// A script in the HTML itself, which no browser runs by the policy that pages are served with (`page_fields`); a style there is let through.
[[nodiscard]] bool has_script_inside(std::string_view html) {
  const std::string text = lower(html);
  bool script = false;
  for (std::size_t at = text.find('<'); at != std::string::npos; at = text.find('<', at)) {
    if (text.compare(at, 4, "<!--") == 0) {
      at = std::min(text.find("-->", at), text.size());
      continue;
    }
    const std::size_t end = std::min(text.find('>', at), text.size());
    const std::string_view tag = std::string_view(text).substr(at, end - at);
    const bool data = has_attribute(tag, "type", true) && tag.find("json") != std::string_view::npos;
    const bool is_script = tag.starts_with("<script");
    script = script || (is_script && !data && !has_attribute(tag, "src", true)) || has_attribute(tag, "on", false);
    at = is_script ? std::min(text.find("</script", end), text.size()) : end;
  }
  return script;
}

// What an attribute of a tag holds, as it is written there; `lowered` is the tag with its letters made small.
[[nodiscard]] std::string_view attribute_of(std::string_view tag, std::string_view lowered, std::string_view name) {
  for (std::size_t at = lowered.find(name); at != std::string_view::npos; at = lowered.find(name, at + 1)) {
    std::size_t begin = at + name.size();
    if (at == 0 || std::string_view(" \t\n\r\"'").find(tag[at - 1]) == std::string_view::npos || begin >= tag.size() || tag[begin] != '=') {
      continue;
    }
    ++begin;
    const bool quoted = begin < tag.size() && (tag[begin] == '"' || tag[begin] == '\'');
    const std::size_t end = quoted ? tag.find(tag[begin], begin + 1) : tag.find_first_of(" \t\n\r", begin);
    begin += quoted ? 1 : 0;
    return tag.substr(begin, end == std::string_view::npos ? end : end - begin);
  }
  return {};
}

// Where the scripts of a page come from.
[[nodiscard]] std::vector<std::string> script_sources(std::string_view html) {
  const std::string text = lower(html);
  std::vector<std::string> sources;
  for (std::size_t at = text.find('<'); at != std::string::npos; at = text.find('<', at + 1)) {
    if (text.compare(at, 4, "<!--") == 0) {
      at = std::min(text.find("-->", at), text.size() - 1);
      continue;
    }
    if (text.compare(at, 7, "<script") != 0) {
      continue;
    }
    const std::size_t length = std::min(text.find('>', at), text.size()) - at;
    const std::string_view source = attribute_of(html.substr(at, length), std::string_view(text).substr(at, length), "src");
    if (!source.empty()) {
      sources.emplace_back(source);
    }
    at = std::min(text.find("</script", at + length), text.size() - 1);
  }
  return sources;
}

// What a browser would do with it that stands in the page at `address`; a page that moves its base is left alone.
[[nodiscard]] std::string remark_on_source(const Pages& pages, const std::string& address, const std::string& source) {
  if (source.find("//") == 0 || source.find("://") != std::string::npos || source.starts_with("data:")) {
    const bool own = source.starts_with("http://127.0.0.1:") || source.starts_with("http://localhost:");
    return own ? std::string() : " loads a script from elsewhere (" + source + "), and the browser will not run it: put the file into this folder";
  }
  const std::string plain = source.substr(0, source.find_first_of("?#"));
  const auto path = (std::filesystem::path(address).parent_path() / plain).lexically_normal().generic_string();
  return pages.contains(path) || path == "/description.js" ? std::string() : " names a script that is not served (" + source + "): put the file into this folder, and start the program again";
}

[[nodiscard]] Problem page_problem(const std::filesystem::path& path, const std::string& why) { return {ExitCode::usage, path.string() + ": " + why}; }

}  // namespace

Pages read_pages(const std::string& folder, std::vector<std::string>& not_served, std::vector<std::string>& remarks) {
  namespace fs = std::filesystem;
  Pages pages;
  std::size_t bytes = 0;
  std::error_code failed;
  fs::recursive_directory_iterator at(folder, failed);
  for (; !failed && at != fs::recursive_directory_iterator(); at.increment(failed)) {
    const fs::path& path = at->path();
    if (path.filename().string().front() == '.') {
      at.disable_recursion_pending();
      continue;
    }
    if (!fs::is_regular_file(at->symlink_status(failed)) || failed) {
      continue;
    }
    const std::string name = "/" + path.lexically_relative(folder).generic_string();
    if (!is_plain(name)) {
      not_served.push_back(path.string() + " (the name is no plain address: letters, digits, dots, dashes and underscores are)");
      continue;
    }
    const std::string ending = path.extension().string();
    const auto* type = std::find_if(page_types.begin(), page_types.end(), [&](const auto& one) { return one.first == ending; });
    if (type == page_types.end()) {
      not_served.push_back(path.string() + " (no file of this kind is served)");
      continue;
    }
    auto text = read_file(path.string(), pages_bytes_max - bytes);
    if (!text) {
      not_served.push_back(path.string() + " (cannot be read, or there would be more than 32 MiB in all)");
      continue;
    }
    bytes += text->size();
    if (ending == ".html" && has_script_inside(*text)) {
      remarks.push_back(path.string() + " holds a script in the page itself, and the browser will not run it: scripts stand in files of their own");
    }
    if (path.filename() == "index.html") {
      pages[name.substr(0, name.size() - std::string_view("index.html").size())] = {type->second, *text};
    }
    pages[name] = {type->second, std::move(*text)};
  }
  for (const auto& [address, page] : pages) {
    if (!address.ends_with(".html") || lower(page.text).find("<base") != std::string::npos) {
      continue;
    }
    for (const std::string& source : script_sources(page.text)) {
      if (const std::string remark = remark_on_source(pages, address, source); !remark.empty()) {
        remarks.push_back((fs::path(folder) / address.substr(1)).string() + remark);
      }
    }
  }
  if (failed || !pages.contains("/")) {
    throw page_problem(folder, "holds no index.html that can be read\n  what to do: give the folder of a front end that is built");
  }
  return pages;
}

}  // namespace limbledger::rpc
