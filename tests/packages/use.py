import cutwater

print(f"{cutwater.npsh_available(1.013, 0.0234, 998.2, 2, 0.5):.3f} m, version {cutwater.__version__}")
