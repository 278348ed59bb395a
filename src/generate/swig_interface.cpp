#include "generate/product.hpp"

namespace cutwater::generate {

std::vector<Product> swig_interface() { return {}; }

}  // namespace cutwater::generate
