// What a clue points at: findings, or items still to be asked. Many clues are made of few of these and most are thrown away, so
// they are joined without copying and written out only where they are shown. The nodes live as long as the Trails they came from.
// Most of what an exam is asked for is not recorded: one item to be asked is kept in the trail itself, and only two make a node.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/item.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <type_traits>
#include <vector>

namespace limbledger::interpret {

struct ToAsk {
  const model::Item* item = nullptr;
  model::Side side{};
  friend bool operator==(const ToAsk&, const ToAsk&) = default;
};

// Nodes in blocks that never move: one judgement makes hundreds, and gives them back all at once.
template <class Node>
class NodeBlocks {
 public:
  NodeBlocks() = default;
  NodeBlocks(const NodeBlocks&) = delete;
  NodeBlocks& operator=(const NodeBlocks&) = delete;
  ~NodeBlocks() {
    static_assert(std::is_trivially_destructible_v<Node>);
    for (Node* block : blocks_) {
      std::allocator<Node>().deallocate(block, a_block);
    }
  }
  [[nodiscard]] const Node* keep(const Node& node) {
    if (next_ == end_) {
      next_block();
    }
    return std::construct_at(next_++, node);
  }
  // All of them; the blocks are used anew.
  void forget() {
    next_ = end_ = nullptr;
    used_ = 0;
  }

 private:
  static constexpr std::size_t a_block = 128;
  [[gnu::noinline]] void next_block() {
    if (used_ == blocks_.size()) {
      blocks_.reserve(used_ + 1);
      blocks_.push_back(std::allocator<Node>().allocate(a_block));
    }
    next_ = blocks_[used_++];
    end_ = next_ + a_block;
  }
  std::vector<Node*> blocks_;
  std::size_t used_ = 0;
  Node* next_ = nullptr;  // in the last that is used
  Node* end_ = nullptr;
};

// In the order in which they were joined, each once.
template <class T, class Trail>
[[nodiscard]] std::vector<T> written_once(const Trail& trail) {
  std::vector<T> out;
  static_cast<void>(trail.any([&](const T& one) {
    if (std::find(out.begin(), out.end(), one) == out.end()) {
      out.push_back(one);
    }
    return false;
  }));
  return out;
}

class FindingTrail {
 public:
  using Leaf = const model::Finding*;
  struct Node;
  using Nodes = NodeBlocks<Node>;
  struct Node {
    Leaf leaf = nullptr;  // of a node without parts
    const Node* first = nullptr;
    const Node* second = nullptr;
    Nodes* kept_in = nullptr;
  };

  FindingTrail() = default;
  FindingTrail(Nodes& nodes, Leaf one) : root_(nodes.keep({one, nullptr, nullptr, &nodes})) {}
  template <class Many>
  [[nodiscard]] static FindingTrail of(Nodes& nodes, const Many& many) {
    FindingTrail out;
    for (const Leaf one : many) {
      out.add(FindingTrail(nodes, one));
    }
    return out;
  }

  [[nodiscard]] bool empty() const { return root_ == nullptr; }
  void clear() { root_ = nullptr; }
  void add(const FindingTrail& other) {
    if (root_ == nullptr) {
      root_ = other.root_;
    } else if (other.root_ != nullptr && other.root_ != root_) {
      join(other);
    }
  }
  template <class Test>
  [[nodiscard]] bool any(const Test& test) const {
    return root_ != nullptr && any_in(*root_, test);
  }
  [[nodiscard]] std::vector<Leaf> written() const { return written_once<Leaf>(*this); }

 private:
  // Seldom: most of what is added is empty, or added to nothing.
  [[gnu::noinline]] void join(const FindingTrail& other) { root_ = root_->kept_in->keep({nullptr, root_, other.root_, root_->kept_in}); }
  template <class Test>
  [[nodiscard]] static bool any_in(const Node& node, const Test& test) {
    return node.first == nullptr ? test(node.leaf) : any_in(*node.first, test) || any_in(*node.second, test);
  }
  const Node* root_ = nullptr;
};

class AskTrail {
 public:
  // 0: nothing; an odd number: the address of an item, and its side in the two bits above the lowest; else the address of a node.
  using Root = std::uintptr_t;
  struct Node {
    Root first = 0, second = 0;
  };
  using Nodes = NodeBlocks<Node>;

  AskTrail() = default;
  AskTrail(Nodes& nodes, const ToAsk& one) : root_(packed(one)), nodes_(&nodes) {}

  [[nodiscard]] bool empty() const { return root_ == 0; }
  void clear() { root_ = 0; }
  void add(const AskTrail& other) {
    if (root_ == 0) {
      *this = other;
    } else if (other.root_ != 0 && other.root_ != root_) {
      join(other);
    }
  }
  template <class Test>
  [[nodiscard]] bool any(const Test& test) const {
    return root_ != 0 && any_in(root_, test);
  }
  [[nodiscard]] std::vector<ToAsk> written() const { return written_once<ToAsk>(*this); }

 private:
  static_assert(alignof(model::Item) >= 8 && alignof(Node) >= 2);
  [[nodiscard]] static Root packed(const ToAsk& one) {
    return reinterpret_cast<Root>(one.item) | static_cast<Root>(one.side) << 1U | Root{1};  // NOLINT(cppcoreguidelines-pro-type-reinterpret-cast)
  }
  [[gnu::noinline]] void join(const AskTrail& other) {
    root_ = reinterpret_cast<Root>(nodes_->keep({root_, other.root_}));  // NOLINT(cppcoreguidelines-pro-type-reinterpret-cast)
  }
  template <class Test>
  [[nodiscard]] static bool any_in(Root root, const Test& test) {
    if ((root & 1U) != 0) {
      return test(ToAsk{reinterpret_cast<const model::Item*>(root & ~Root{7}), static_cast<model::Side>(root >> 1U & 3U)});  // NOLINT
    }
    const auto* node = reinterpret_cast<const Node*>(root);  // NOLINT(cppcoreguidelines-pro-type-reinterpret-cast)
    return any_in(node->first, test) || any_in(node->second, test);
  }
  Root root_ = 0;
  Nodes* nodes_ = nullptr;
};

struct Trails {
  FindingTrail::Nodes findings;
  AskTrail::Nodes asks;
};

}  // namespace limbledger::interpret
