"""Parts of audit.py: asking for all pumps at once, the checks, the tables, the pictures, the comparison with the workbook."""
