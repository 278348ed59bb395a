' What goes on paper: the columns of Data, Curves, Checks and Build that hold a pump, and the sheets that a pump is chosen on.
Option Explicit

Const LAST_ROW = 1048575
Const PAGE_COLUMNS = 9  ' that fit on a page, and that the heading needs

' The button: a PDF of what is filled now, beside the workbook and under its name.
Sub AsPdf
  Dim target
  If ThisComponent.URL = "" Then
    MsgBox "Save the workbook first: the PDF is written beside it."
    Exit Sub
  End If
  target = Left(ThisComponent.URL, InStrRev(ThisComponent.URL, ".")) & "pdf"
  OnlyFilled()
  Dim save(0) As New com.sun.star.beans.PropertyValue
  save(0).Name = "FilterName" : save(0).Value = "calc_pdf_Export"
  ThisComponent.storeToURL(target, save())
  Everything()  ' so that a pump which comes later is printed too
End Sub

Sub OnlyFilled
  SetAreas(True)
End Sub

Sub Everything
  SetAreas(False)
End Sub

Sub SetAreas(only_filled As Boolean)
  Dim changed, index, sheet, area, tags, filled, least
  changed = ThisComponent.isModified()
  For index = 0 To ThisComponent.Sheets.Count - 1
    sheet = ThisComponent.Sheets.getByIndex(index)
    If sheet.NamedRanges.hasByName("printed") Then
      area = sheet.getCellRangeByName("printed").RangeAddress
      If only_filled Then
        If sheet.NamedRanges.hasByName("printed_tags") Then
          tags = sheet.getCellRangeByName("printed_tags")
          filled = LastFilled(tags)
          least = tags.RangeAddress.StartColumn + PAGE_COLUMNS - 1
          If filled < tags.RangeAddress.StartColumn Then
            area = Nowhere(sheet)
          ElseIf filled >= least Then
            area.EndColumn = filled
          ElseIf least < area.EndColumn Then
            area.EndColumn = least
          End If
        End If
        If sheet.NamedRanges.hasByName("printed_if") Then
          tags = sheet.getCellRangeByName("printed_if")
          If LastFilled(tags) < tags.RangeAddress.StartColumn Then area = Nowhere(sheet)
        End If
      End If
      sheet.setPrintTitleRows(Not only_filled Or area.EndRow < LAST_ROW)
      sheet.setPrintAreas(Array(area))
    End If
  Next index
  ThisComponent.setModified(changed)
End Sub

' An empty cell: a page without anything on it is not printed.
Function Nowhere(sheet)
  Nowhere = sheet.getCellRangeByPosition(0, LAST_ROW, 0, LAST_ROW).RangeAddress
End Function

' The last of these cells that holds a word; the column before them where none does.
Function LastFilled(cells) As Long
  Dim column
  LastFilled = cells.RangeAddress.StartColumn - 1
  For column = 0 To cells.Columns.Count - 1
    If Trim(cells.getCellByPosition(column, 0).String) <> "" Then LastFilled = cells.RangeAddress.StartColumn + column
  Next column
End Function
