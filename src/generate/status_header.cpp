// include/cutwater/status.h: the statuses as an enumeration.
#include "generate/product.hpp"

#include "catalogue/statuses.hpp"

namespace cutwater::generate {

namespace {

std::vector<Product> status_header()
{
    std::string text;
    put(text,
        "/* {}. */\n#ifndef CUTWATER_STATUS_H\n#define CUTWATER_STATUS_H\n\n"
        "/* What a call came to. Every call returns one of these. */\ntypedef enum cutwater_status\n{{\n",
        made_by);
    for (const StatusInfo& s : statuses()) {
        const bool last = s.value + 1 == static_cast<int>(statuses().size());
        put(text, "    CUTWATER_{} = {}{}  /* {} */\n", s.name, s.value, last ? "" : ",", s.meaning);
    }
    put(text, "}} cutwater_status;\n\n#endif\n");
    return {{"include/cutwater/status.h", text}};
}

const Registered registered(status_header);

}  // namespace
}  // namespace cutwater::generate
