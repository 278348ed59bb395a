// A refusal whose sentence is put together where it is made. Apart from refusal.hpp, which every formula's file reads.
#pragma once

#include "catalogue/refusal.hpp"
#include "units/message.hpp"

namespace cutwater {

/// Blames no input. A foreign text goes in as Quoted(text).view().
template <class... Args>
cutwater_status refuse_saying(cutwater_status status, cutwater_refusal* refusal, fmt::format_string<Args...> form,
                              Args&&... args) noexcept
{
    refuse(status, "", refusal);
    if (refusal) Message(refusal->message, sizeof refusal->message).add(form, std::forward<Args>(args)...);
    return status;
}

}  // namespace cutwater
