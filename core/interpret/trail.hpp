// What a clue points at: findings, or items still to be asked. Many clues are made of few of these and most are thrown away, so
// they are joined without copying and written out only where they are shown. The nodes live as long as the Trails they came from.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/item.hpp"

#include <algorithm>
#include <cstddef>
#include <memory>
#include <type_traits>
#include <vector>

namespace limbledger::interpret {

struct ToAsk {
  const model::Item* item = nullptr;
  model::Side side{};
  friend bool operator==(const ToAsk&, const ToAsk&) = default;
};

template <class T>
class Trail {
 public:
  class Nodes;
  struct Node {
    T leaf{};  // of a node without parts
    const Node* first = nullptr;
    const Node* second = nullptr;
    Nodes* kept_in = nullptr;
  };
  // In blocks that never move: one judgement makes a thousand, and gives them back all at once.
  class Nodes {
   public:
    Nodes() = default;
    Nodes(const Nodes&) = delete;
    Nodes& operator=(const Nodes&) = delete;
    ~Nodes() {
      for (Node* block : blocks_) {
        std::allocator<Node>().deallocate(block, a_block);  // a node holds pointers alone: nothing of it has to be ended
      }
    }
    [[nodiscard]] const Node* keep(const T& leaf, const Node* first = nullptr, const Node* second = nullptr) {
      static_assert(std::is_trivially_destructible_v<T>);
      if (next_ == end_) {
        add_block();
      }
      return std::construct_at(next_++, Node{leaf, first, second, this});
    }

   private:
    static constexpr std::size_t a_block = 128;
    [[gnu::noinline]] void add_block() {
      blocks_.reserve(blocks_.size() + 1);
      next_ = blocks_.emplace_back(std::allocator<Node>().allocate(a_block));
      end_ = next_ + a_block;
    }
    std::vector<Node*> blocks_;
    Node* next_ = nullptr;  // in the last of them
    Node* end_ = nullptr;
  };

  Trail() = default;
  Trail(Nodes& nodes, const T& one) : root_(nodes.keep(one)) {}
  template <class Many>
  [[nodiscard]] static Trail of(Nodes& nodes, const Many& many) {
    Trail out;
    for (const T& one : many) {
      out.add(Trail(nodes, one));
    }
    return out;
  }

  [[nodiscard]] bool empty() const { return root_ == nullptr; }
  void clear() { root_ = nullptr; }
  void add(const Trail& other) {
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
  // In the order in which they were joined, each once.
  [[nodiscard]] std::vector<T> written() const {
    std::vector<T> out;
    static_cast<void>(any([&](const T& one) {
      if (std::find(out.begin(), out.end(), one) == out.end()) {
        out.push_back(one);
      }
      return false;
    }));
    return out;
  }

 private:
  // Seldom: most of what is added is empty, or added to nothing.
  [[gnu::noinline]] void join(const Trail& other) { root_ = root_->kept_in->keep(T{}, root_, other.root_); }
  template <class Test>
  [[nodiscard]] static bool any_in(const Node& node, const Test& test) {
    return node.first == nullptr ? test(node.leaf) : any_in(*node.first, test) || any_in(*node.second, test);
  }
  const Node* root_ = nullptr;
};

using FindingTrail = Trail<const model::Finding*>;
using AskTrail = Trail<ToAsk>;

struct Trails {
  FindingTrail::Nodes findings;
  AskTrail::Nodes asks;
};

}  // namespace limbledger::interpret
