#include <cutwater/cutwater.h>

#include <stdio.h>

int main(void)
{
    double npsh;
    cutwater_refusal refusal;
    if (cutwater_npsh_available(1.013, 0.0234, 998.2, 2, 0.5, &npsh, &refusal) != CUTWATER_OK)
        return puts(refusal.message), 1;
    printf("%.3f m, version %s\n", npsh, cutwater_version());
    return 0;
}
