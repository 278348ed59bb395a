"""First results in Python, with the package installed: python3 examples/first.py"""
import cutwater

print("NPSH available:", cutwater.npsh_available(1.013, 0.023, 998, 2, 0.6), "m")
print("the same, with units:", cutwater.npsh_available("14.7 psia", "23 mbar(a)", 998, "6.56 ft", friction_head_m=0.6), "m")
try:
    cutwater.npsh_available("1.0 barg", 0.023, 998, 2, 0.6)
except cutwater.Refused as refused:
    print(refused)
