#pragma once

#include <atomic>
#include <concepts>
#include <functional>
#include <memory>
#include <mutex>
#include <utility>

namespace boardmark::core {

/// What stands behind every copy of a Deferred, whatever its value is.
class KeptValue {
public:
    using Made = std::shared_ptr<const void>;

    explicit KeptValue(std::function<Made()> make);
    explicit KeptValue(Made made);

    /// The value, made where it is not yet.
    const void* value();

private:
    std::mutex making_;
    std::function<Made()> make_;
    Made made_;
};

/// A value that is made when it is first read, and kept; copies share it. Several threads may read
/// it. What is made throws nothing, or the first reader is thrown what it throws and the next makes
/// it anew.
template <typename Value>
class Deferred {
public:
    /// @param make  makes the value, called once
    template <std::invocable Make>
    explicit Deferred(Make make)
        : kept_{std::make_shared<KeptValue>([make = std::move(make)]() -> KeptValue::Made {
            return std::make_shared<const Value>(make());
        })} {}

    /// A value that is made already.
    Deferred(Value made) // NOLINT(google-explicit-constructor): a value is what it stands for
        : kept_{std::make_shared<KeptValue>(std::make_shared<const Value>(std::move(made)))} {}

    Deferred(const Deferred& other)
        : kept_{other.kept_}
        , made_{other.made_.load(std::memory_order_acquire)} {}

    // Of itself each member keeps what it has. NOLINTNEXTLINE(bugprone-unhandled-self-assignment)
    Deferred& operator=(const Deferred& other) {
        kept_ = other.kept_;
        made_.store(other.made_.load(std::memory_order_acquire), std::memory_order_release);
        return *this;
    }

    ~Deferred() = default;

    // Who reads it again, a million times, finds it in one step.
    const Value& operator*() const {
        const void* made = made_.load(std::memory_order_acquire);
        if (!made) {
            made = kept_->value();
            made_.store(made, std::memory_order_release);
        }
        return *static_cast<const Value*>(made);
    }
    const Value* operator->() const { return &**this; }
    operator const Value&() const { return **this; } // NOLINT(google-explicit-constructor)

private:
    std::shared_ptr<KeptValue> kept_;
    mutable std::atomic<const void*> made_ = nullptr;
};

} // namespace boardmark::core
