#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace spile::viewmodels {

/// The steps of a tasting sheet in the order they are asked: each attribute, the liking, faults,
/// readings, a note, and closing. A step has a name, so that a sheet can be left and found again.
class SheetSteps {
public:
    enum class Kind { Attribute, Liking, Faults, Readings, Note, Close };

    SheetSteps() = default;
    explicit SheetSteps(std::vector<std::string> attributes) : attributes_(std::move(attributes)) {}

    [[nodiscard]] Kind kind() const;
    /// The attribute that is asked for; empty if the step is not an attribute.
    [[nodiscard]] std::string attribute() const;
    [[nodiscard]] int index() const { return index_; }
    [[nodiscard]] int count() const
    {
        return static_cast<int>(attributes_.size()) + afterAttributes;
    }
    [[nodiscard]] const std::vector<std::string>& attributes() const { return attributes_; }
    [[nodiscard]] bool isFirst() const { return index_ == 0; }
    [[nodiscard]] bool isLast() const { return index_ == count() - 1; }

    void next() { index_ += isLast() ? 0 : 1; }
    void previous() { index_ -= isFirst() ? 0 : 1; }
    /// "attribute oak", "liking", "close".
    [[nodiscard]] std::string name() const;
    /// Go to the step of that name; stays where it is if there is none.
    void goTo(std::string_view name);
    void goToAttribute(std::string_view attribute);
    void goToKind(Kind kind);

private:
    static constexpr int afterAttributes = 5;

    std::vector<std::string> attributes_;
    int index_ = 0;
};

}  // namespace spile::viewmodels
