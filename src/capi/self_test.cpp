#include <cutwater/library.h>

#include "call/example.hpp"
#include "catalogue/families.hpp"
#include "catalogue/guard.hpp"

extern "C" cutwater_status cutwater_self_test(cutwater_refusal* refusal)
{
    using namespace cutwater;
    return guard(refusal, [&] {
        cutwater_status status = CUTWATER_OK;
        for (std::size_t i = 0; i < function_count() && status == CUTWATER_OK; ++i)
            status = check_example(function_at(i), refusal);
        return status;
    });
}
