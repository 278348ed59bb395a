#include "generate/product.hpp"

namespace cutwater::generate {

std::vector<Product> catalogue_json() { return {{"capi/catalogue_json.cpp", "extern \"C\" const char* cutwater_catalogue_json(void) { return \"{}\"; }\n"}}; }

}  // namespace cutwater::generate
