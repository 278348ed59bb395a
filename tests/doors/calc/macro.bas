Option Explicit
' The service that serves the cells serves Basic: same methods, same answers. Writes to the workbook's sheets.
Sub Fill
  Dim calc, sheet, t, none, i
  calc = createUnoService("org.cutwater.Calc")
  sheet = ThisComponent.Sheets.getByName("Macro")
  sheet.getCellByPosition(0, 0).Value = calc.NPSH_AVAILABLE(1.01325, 0.02339, 998.2, 2, 0.5)
  sheet.getCellByPosition(0, 1).Value = calc.NPSH_AVAILABLE("1013.25 mbara", 0.02339, 998.2, 2, 0.5)
  sheet.getCellByPosition(0, 2).Value = calc.CURVE_VALUE(Array(0, 50, 100), Array(40, 38, 30), 75)
  Dim x(2) As Double, y(2) As Integer, block(0, 2) As Double
  For i = 0 To 2
    x(i) = 50 * i
    block(0, i) = 50 * i
  Next
  y(0) = 40 : y(1) = 38 : y(2) = 30
  sheet.getCellByPosition(0, 3).Value = calc.CURVE_VALUE(x, y, 75)
  sheet.getCellByPosition(0, 4).Value = calc.CURVE_VALUE(block, y, 75)
  sheet.getCellByPosition(0, 5).Value = calc.CURVE_VALUE(sheet.getCellRangeByName("D1:D5").getDataArray(), sheet.getCellRangeByName("E1:E5").getDataArray(), 75)
  sheet.getCellByPosition(0, 6).String = calc.REFUSAL("npsh_available", Array(-1, 0.02339, 998.2, 2, 0.5))
  sheet.getCellByPosition(0, 7).String = Refused(calc, -1)
  sheet.getCellByPosition(0, 8).String = Refused(calc, none)
  sheet.getCellByPosition(0, 9).String = Refused(calc, True)
  sheet.getCellByPosition(0, 10).String = Refused(calc, Array(1, 2))
  sheet.getCellByPosition(0, 12).Value = calc.SOLVE_FOR("velocity_head", "flow", none, "1 m", Array(none, 100))
  t = calc.SENSITIVITY("velocity_head", none, Array(100, 150))
  sheet.getCellByPosition(0, 13).Value = t(1)(1)
  sheet.getCellByPosition(0, 14).String = Left(calc.WORKING("velocity_head", Array(100, 150)), 13)
  Wizard
End Sub

' What a refused call tells the macro; empty when it was not refused.
Function Refused(calc, surface) As String
  On Error Goto Told
  calc.NPSH_AVAILABLE(surface, 0.02339, 998.2, 2, 0.5)
  Refused = ""
Done:
  Exit Function
Told:
  Refused = Split(Error$, "Message: ")(1)
  Resume Done  ' without it the error comes up again later
End Function

' What the function wizard shows: a row a function, a name and a text an argument.
Sub Wizard
  Dim list, i, p, a, name, description, category, row, column, sheet, given
  list = createUnoService("com.sun.star.sheet.FunctionDescriptions")
  sheet = ThisComponent.Sheets.getByName("Wizard")
  row = 0
  For i = 0 To list.getCount() - 1
    description = ""
    given = Empty
    For Each p In list.getByIndex(i)
      Select Case p.Name
        Case "Name" : name = p.Value
        Case "Description" : description = p.Value
        Case "Category" : category = p.Value
        Case "Arguments" : given = p.Value
      End Select
    Next
    If Left(description, 8) = "Cutwater" Then
      sheet.getCellByPosition(0, row).String = name
      sheet.getCellByPosition(1, row).String = description
      sheet.getCellByPosition(2, row).Value = category
      column = 3
      If IsArray(given) Then  ' else it takes none
        For Each a In given
          sheet.getCellByPosition(column, row).String = a.Name
          sheet.getCellByPosition(column + 1, row).String = a.Description
          column = column + 2
        Next
      End If
      row = row + 1
    End If
  Next
End Sub
