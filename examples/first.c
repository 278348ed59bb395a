/* First results in C. After building the library in build/:
 *   cc examples/first.c -Ibuild/generated/include -Iinclude -Lbuild -lcutwater -Wl,-rpath,$PWD/build -o first
 *   ./first */
#include <cutwater/cutwater.h>

#include <stdio.h>

int main(void)
{
    double npsh = 0;
    cutwater_refusal refusal;
    /* surface and vapour pressure in bar absolute, density in kg/m3, level and losses in m */
    if (cutwater_npsh_available(1.013, 0.023, 998, 2, 0.6, &npsh, &refusal) == CUTWATER_OK)
        printf("NPSH available: %.3f m\n", npsh);
    if (cutwater_npsh_available(-1, 0.023, 998, 2, 0.6, &npsh, &refusal) != CUTWATER_OK)
        printf("%s\n", refusal.message);
    return 0;
}
