#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <utility>

namespace boardmark::core {

/// A value that is made when it is first read, and kept; copies share it. Several threads may read
/// it. What is made throws nothing, or the first reader is thrown what it throws and the next makes
/// it anew.
template <typename Value>
class Deferred {
public:
    /// @param make  makes the value, called once
    explicit Deferred(std::function<Value()> make)
        : kept_{std::make_shared<Kept>(std::move(make))} {}

    /// A value that is made already.
    Deferred(Value made) // NOLINT(google-explicit-constructor): a value is what it stands for
        : kept_{std::make_shared<Kept>(std::move(made))} {}

    Deferred(const Deferred& other)
        : kept_{other.kept_}
        , made_{other.made_.load(std::memory_order_acquire)} {}

    Deferred& operator=(const Deferred& other) {
        kept_ = other.kept_;
        made_.store(other.made_.load(std::memory_order_acquire), std::memory_order_release);
        return *this;
    }

    ~Deferred() = default;

    // Who reads it again, a million times, finds it in one step.
    const Value& operator*() const {
        const Value* made = made_.load(std::memory_order_acquire);
        return made ? *made : first_read();
    }
    const Value* operator->() const { return &**this; }
    operator const Value&() const { return **this; } // NOLINT(google-explicit-constructor)

private:
    struct Kept {
        explicit Kept(std::function<Value()> how)
            : make{std::move(how)} {}
        explicit Kept(Value made)
            : value{std::move(made)} {}

        std::mutex making;
        std::function<Value()> make;
        std::optional<Value> value;
    };

    [[gnu::noinline]] const Value& first_read() const {
        const std::lock_guard alone{kept_->making};
        if (!kept_->value) {
            kept_->value.emplace(kept_->make());
        }
        made_.store(&*kept_->value, std::memory_order_release);
        return *kept_->value;
    }

    std::shared_ptr<Kept> kept_;
    mutable std::atomic<const Value*> made_ = nullptr;
};

} // namespace boardmark::core
