// A refusal whose sentence is put together where it is made. Apart from refusal.hpp, which every formula's file reads.
#pragma once

#include "catalogue/refusal.hpp"
#include "units/message.hpp"

namespace cutwater {

/// Where a refusal's sentence is written; nowhere when there is no refusal to fill.
Message sentence_of(cutwater_refusal* refusal) noexcept;

/// Blames no input. A foreign text goes in as Quoted(text).view().
template <class... Args>
cutwater_status refuse_saying(cutwater_status status, cutwater_refusal* refusal, fmt::format_string<Args...> form,
                              Args&&... args) noexcept
{
    refuse(status, "", refusal);
    sentence_of(refusal).add(form, std::forward<Args>(args)...);
    return status;
}

}  // namespace cutwater
