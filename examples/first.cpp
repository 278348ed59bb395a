// First results in C++, with quantities. After building the library in build/:
//   c++ -std=c++20 examples/first.cpp -Ibuild/generated/include -Iinclude -Lbuild -lcutwater -Wl,-rpath,$PWD/build -o
//   first && ./first
#include <cutwater/cutwater.hpp>
#include <cutwater/unit_table.hpp>

#include <iostream>

int main()
{
    using namespace cutwater;
    using namespace cutwater::units;
    const auto npsh = npsh_available(bara(1.013), bara(0.023), kgm3(998), metre(2), metre(0.6));
    std::cout << "NPSH available: " << metre.in(npsh) << " m\n";
    // npsh_available(barg(0), …) does not compile: a gauge pressure is not an absolute one.
    try {
        npsh_available(bara(-1), bara(0.023), kgm3(998), metre(2), metre(0.6));
    } catch (const Refused& refused) {
        std::cout << refused.what() << '\n';
    }
}
