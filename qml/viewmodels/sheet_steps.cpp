#include "qml/viewmodels/sheet_steps.hpp"

#include <array>

namespace spile::viewmodels {

namespace {

constexpr std::string_view attributePrefix = "attribute ";
constexpr std::array<std::string_view, 5> names = {"liking", "faults", "readings", "note", "close"};

}  // namespace

SheetSteps::Kind SheetSteps::kind() const
{
    const int after = index_ - static_cast<int>(attributes_.size());
    return after < 0 ? Kind::Attribute : static_cast<Kind>(static_cast<int>(Kind::Liking) + after);
}

std::string SheetSteps::attribute() const
{
    return kind() == Kind::Attribute ? attributes_[static_cast<std::size_t>(index_)]
                                     : std::string();
}

std::string SheetSteps::name() const
{
    if (kind() == Kind::Attribute) {
        return std::string(attributePrefix) + attribute();
    }
    return std::string(names.at(static_cast<std::size_t>(kind()) - 1));
}

void SheetSteps::goTo(std::string_view name)
{
    if (name.starts_with(attributePrefix)) {
        goToAttribute(name.substr(attributePrefix.size()));
        return;
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names.at(i) == name) {
            goToKind(static_cast<Kind>(i + 1));
        }
    }
}

void SheetSteps::goToAttribute(std::string_view attribute)
{
    for (std::size_t i = 0; i < attributes_.size(); ++i) {
        if (attributes_[i] == attribute) {
            index_ = static_cast<int>(i);
        }
    }
}

void SheetSteps::goToKind(Kind kind)
{
    if (kind != Kind::Attribute) {
        index_ = static_cast<int>(attributes_.size()) + static_cast<int>(kind) - 1;
    }
}

}  // namespace spile::viewmodels
