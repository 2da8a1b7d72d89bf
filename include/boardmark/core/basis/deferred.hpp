#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <utility>

namespace boardmark::core {

/// A value that is made when it is first read, and kept; copies share it. Several threads may read it.
/// What is made throws nothing, or the first reader is thrown what it throws and the next makes it anew.
template <typename Value> class Deferred {
public:
    /// @param make  makes the value, called once
    explicit Deferred(std::function<Value()> make)
        : kept_{std::make_shared<Kept>(std::move(make))} {}

    /// A value that is made already.
    Deferred(Value made) // NOLINT(google-explicit-constructor): a value is what it stands for
        : kept_{std::make_shared<Kept>(std::move(made))} {}

    const Value& operator*() const { return kept_->value(); }
    const Value* operator->() const { return &kept_->value(); }
    operator const Value&() const { return kept_->value(); } // NOLINT(google-explicit-constructor)

private:
    class Kept {
    public:
        explicit Kept(std::function<Value()> make) : make_{std::move(make)} {}
        explicit Kept(Value made) : value_{std::move(made)}, made_{&*value_} {}

        const Value& value() {
            const Value* made = made_.load(std::memory_order_acquire);
            return made ? *made : first_read();
        }

    private:
        const Value& first_read() {
            const std::lock_guard alone{making_};
            if (!value_) {
                value_.emplace(make_());
                made_.store(&*value_, std::memory_order_release);
            }
            return *value_;
        }

        std::mutex making_;
        std::function<Value()> make_;
        std::optional<Value> value_;
        std::atomic<const Value*> made_ = nullptr;
    };

    std::shared_ptr<Kept> kept_;
};

} // namespace boardmark::core
