#include "generate/product.hpp"

namespace cutwater::generate {

std::vector<Product> calc_component() { return {}; }

}  // namespace cutwater::generate
