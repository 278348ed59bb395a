' For macros and for the sheets: the sentence behind a refusal, why a cell is refused, and the sheet Service back to the data.
Option Explicit

Const PREFIX = "ORG.CUTWATER.CALC."

' Why a function refuses these arguments, and what it would accept; empty when it is answered. No error comes up, and none need be caught:
'   If Refusal("npsh_available", Array(1.013, 0.023, 998, 2, 0.6)) = "" Then ...
Function Refusal(name As String, arguments) As String
  Dim service
  service = createUnoService("org.cutwater.Calc")
  Refusal = service.REFUSAL(name, arguments)
End Function

' The answer of a function, or nothing and the sentence; no error comes up. The answer of several results is a row of them, counted from 0.
'   npsh = Ask("npsh_available", Array(1.013, 0.023, 998, 2, 0.6), told)
'   If told <> "" Then MsgBox told
Function Ask(name As String, arguments, told As String)
  Dim cells
  told = Refusal(name, arguments)
  If told = "" Then
    cells = createUnoService("com.sun.star.sheet.FunctionAccess")
    Ask = cells.callFunction(PREFIX & UCase(name), arguments)
  End If
End Function

' Within an error handler: the sentence alone, from Error$, without what Basic puts around it. On Error Goto catches a refusal; On Error
' Resume Next goes on as if nothing had been, without an error: the variable then keeps what it held before.
Function Sentence(told As String) As String
  Dim parts
  parts = Split(told, "Message: ")
  Sentence = parts(UBound(parts))
  Do While Right(Sentence, 1) = Chr(10) Or Right(Sentence, 1) = Chr(13)
    Sentence = Left(Sentence, Len(Sentence) - 1)
  Loop
End Function

' Both ways, once answered and once refused; what they give is joined for the eye.
Function Example(Optional anything) As String
  Dim told As String, npsh, service
  npsh = Ask("npsh_available", Array(1.013, 0.0234, 998.2, 2, 0.5), told)
  Example = "answered " & npsh & told
  npsh = Ask("npsh_available", Array("1.013 barg", 0.0234, 998.2, 2, 0.5), told)
  Example = Example & "; asked: " & told
  On Error Goto Refused
  service = createUnoService("org.cutwater.Calc")
  npsh = service.NPSH_AVAILABLE("1.013 barg", 0.0234, 998.2, 2, 0.5)
  Exit Function
Refused:
  Example = Example & "; caught: " & Sentence(Error$)
End Function

' The button of the sheet Service: what was typed to be tried is emptied.
Sub BackToData
  Dim sheet, cells, row, name, cell
  sheet = ThisComponent.Sheets.getByName("Service")
  sheet.getCellRangeByName("tried_for").clearContents(1 + 2 + 4 + 16)
  For Each name In Array("TriedLeft", "TriedRight", "TriedFlows", "TriedHeads", "TriedEfficiencies", "TriedNpsh3s")
    cells = sheet.getCellRangeByName(name)
    For row = 0 To cells.Rows.Count - 1
      cell = cells.getCellByPosition(0, row)
      If Not cell.CellProtection.IsLocked Then cell.clearContents(1 + 2 + 4 + 16)
    Next row
  Next name
End Sub

' Beside each refused cell of the sheet that is shown, as a comment, why it is refused.
Sub ExplainSheet
  Explain(ThisComponent.CurrentController.ActiveSheet.getCellByPosition(0, 0))
End Sub

' The sheet of a cell; how many comments were put down.
Function Explain(anywhere) As Long
  Dim sheet, cells, cell, told, locked
  sheet = anywhere.Spreadsheet
  locked = sheet.isProtected()
  If locked Then sheet.unprotect("")  ' a locked sheet takes no comments
  Forget(sheet)
  cells = sheet.queryFormulaCells(4).getCells().createEnumeration()
  Do While cells.hasMoreElements()
    cell = cells.nextElement()
    told = WhyRefused(cell)
    If told <> "" Then sheet.Annotations.insertNew(cell.CellAddress, told)
  Loop
  If locked Then sheet.protect("")
  Explain = sheet.Annotations.Count
End Function

' The comments that ExplainSheet has left.
Sub Forget(sheet)
  Dim index
  For index = sheet.Annotations.Count - 1 To 0 Step -1
    If Left(sheet.Annotations.getByIndex(index).String, 9) = "Refused: " Then sheet.Annotations.removeByIndex(index)
  Next index
End Sub

' The selected cell's reason, in a box.
Sub ExplainCell
  Dim cell, told
  cell = ThisComponent.CurrentSelection
  If Not cell.supportsService("com.sun.star.sheet.SheetCell") Then
    MsgBox "Select one cell."
    Exit Sub
  End If
  told = WhyRefused(cell)
  MsgBox IIf(told = "", "The cell is not refused.", told)
End Sub

' Why a cell holds an error: the reason of the first of its calls that cutwater refuses, or else that of a refused cell that it stands on.
Function WhyRefused(cell) As String
  WhyRefused = ""
  If cell.getError() <> 0 Then WhyRefused = "Refused: " & Reason(cell, 0)
End Function

Function Reason(cell, depth As Integer) As String
  Dim calls, index, told, name, scratch, others, other
  calls = InnermostFirst(cell.Formula)
  scratch = cell.Spreadsheet.getCellByPosition(cell.Spreadsheet.Columns.Count - 1, cell.Spreadsheet.Rows.Count - 1)
  For index = 0 To UBound(calls)
    scratch.Formula = "=" & calls(index)
    If scratch.getError() <> 0 Then
      name = Mid(calls(index), Len(PREFIX) + 1, InStr(calls(index), "(") - Len(PREFIX) - 1)
      scratch.Formula = "=" & PREFIX & "REFUSAL(""" & LCase(name) & """;" & Mid(calls(index), InStr(calls(index), "(") + 1)
      told = ""
      If scratch.getError() = 0 Then told = scratch.String
      If told <> "" Then
        scratch.clearContents(1 + 2 + 4 + 16)
        Reason = told
        Exit Function
      End If
    End If
  Next index
  scratch.clearContents(1 + 2 + 4 + 16)
  If depth < 20 Then
    others = cell.queryPrecedents(False).queryFormulaCells(4).getCells().createEnumeration()  ' those with an error, the cell itself among them
    Do While others.hasMoreElements()
      other = others.nextElement()
      If other.AbsoluteName <> cell.AbsoluteName Then
        Reason = Join(Split(other.AbsoluteName, "$"), "") & ": " & Reason(other, depth + 1)
        Exit Function
      End If
    Loop
  End If
  Reason = "it stands on a refused cell of another sheet, or on no call of cutwater: " & cell.String
End Function

' The calls of cutwater in a formula: a call within another stands before it.
Function InnermostFirst(formula As String)
  Dim found(), place, start, depth, quoted, letter, finish
  place = Len(formula)
  Do While place > 0
    start = 0
    If Mid(formula, place, Len(PREFIX)) = PREFIX Then start = place
    If start > 0 Then
      finish = InStr(start, formula, "(") : depth = 0 : quoted = False
      Do While finish <= Len(formula)
        letter = Mid(formula, finish, 1)
        If letter = """" Then quoted = Not quoted
        If letter = "(" And Not quoted Then depth = depth + 1
        If letter = ")" And Not quoted Then depth = depth - 1
        If depth = 0 Then Exit Do
        finish = finish + 1
      Loop
      ReDim Preserve found(UBound(found) + 1)
      found(UBound(found)) = Mid(formula, start, finish - start + 1)
    End If
    place = place - 1
  Loop
  InnermostFirst = found
End Function
