#pragma once

#include "core/cellar/field.hpp"
#include "qml/viewmodels/formats.hpp"

#include <functional>

namespace spile::viewmodels {

/// Return a field and its value as they are said: "The volume: 70 mL". `nameOf` names what an id
/// stands for; empty: nobody knows.
[[nodiscard]] QString textOf(const cellar::FieldSpec& field, const ledger::Value& value,
                             const Formats& formats,
                             const std::function<QString(const SubjectId&)>& nameOf);

}  // namespace spile::viewmodels
