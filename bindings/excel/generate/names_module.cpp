// excel/cutwater_names.bas: turns the calls of a workbook from their short names, NPSH_AVAILABLE, to the full ones by
// which Calc knows them in an .xlsx, ORG.CUTWATER.CALC.NPSH_AVAILABLE, and back. It needs neither the add-in nor the
// DLL.
#include "answers/questions.hpp"
#include "generate/product.hpp"

namespace cutwater::generate {
namespace {

constexpr std::size_t longest_line = 110;

const std::string_view head = R"bas('
' Two macros for the workbook in front (Alt+F8):
'   CutwaterFullNames   before LibreOffice is to open it
'   CutwaterShortNames  to read and edit its formulas in Excel
' They go through the formulas in cells and in defined names, and change the names of Cutwater's calls, nothing else.
Option Explicit

Private Const Prefix As String = "ORG.CUTWATER.CALC."

Public Sub CutwaterFullNames()
    MsgBox CutwaterRenameAll(ActiveWorkbook, True)
End Sub

Public Sub CutwaterShortNames()
    MsgBox CutwaterRenameAll(ActiveWorkbook, False)
End Sub

' The formula with its calls by full or by short names; what stands in quotes stays.
Private Function CutwaterRenamed(ByVal formula As String, ByVal full As Boolean) As String
    Dim made As String
    Dim sign As String
    Dim word As String
    Dim at As Long
    Dim start As Long
    at = 1
    Do While at <= Len(formula)
        sign = Mid(formula, at, 1)
        start = at
        at = at + 1
        If sign = """" Or sign = "'" Then
            Do While at <= Len(formula) And Mid(formula, at, 1) <> sign
                at = at + 1
            Loop
            at = at + 1
            made = made & Mid(formula, start, at - start)
        ElseIf CutwaterOfName(sign) Then
            Do While CutwaterOfName(Mid(formula, at, 1))
                at = at + 1
            Loop
            word = Mid(formula, start, at - start)
            If Mid(formula, at, 1) = "(" Then word = CutwaterName(word, full)
            made = made & word
        Else
            made = made & sign
        End If
    Loop
    CutwaterRenamed = made
End Function

Private Function CutwaterOfName(ByVal sign As String) As Boolean
    If sign = "" Then Exit Function
    CutwaterOfName = InStr(1, "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_.", UCase(sign)) > 0 Or AscW(sign) > 127 Or _
        AscW(sign) < 0
End Function

' A name that is none of ours comes back as it is.
Private Function CutwaterName(ByVal word As String, ByVal full As Boolean) As String
    Dim own As String
    own = UCase(word)
    If Left(own, Len(Prefix)) = Prefix Then own = Mid(own, Len(Prefix) + 1)
    CutwaterName = word
    If InStr(1, CutwaterKnown(), " " & own & " ") = 0 Then Exit Function
    CutwaterName = own
    If full Then CutwaterName = Prefix & own
End Function

Private Function CutwaterRenameAll(ByVal book As Object, ByVal full As Boolean) As String
    Dim sheet As Object
    Dim defined As Object
    Dim changed As Long
    Dim left_alone As String
    Dim made As String
    Dim stopped As String
    Dim reckons As Long
    If book Is Nothing Then
        CutwaterRenameAll = "Open a workbook first."
        Exit Function
    End If
    reckons = Application.Calculation
    On Error GoTo Restore
    Application.Calculation = -4135 ' by hand, until all is changed
    For Each sheet In book.Worksheets
        If sheet.ProtectContents Then
            left_alone = left_alone & vbLf & sheet.Name & ": the sheet is protected; take that off first"
        Else
            CutwaterRenameSheet sheet, full, changed, left_alone
        End If
    Next
    For Each defined In book.Names
        made = CutwaterRenamed(defined.RefersTo, full)
        If made <> defined.RefersTo Then
            defined.RefersTo = made
            changed = changed + 1
        End If
    Next
    Err.Clear
Restore:
    stopped = Err.Description
    Application.Calculation = reckons
    CutwaterRenameAll = changed & " formulas changed."
    If stopped <> "" Then CutwaterRenameAll = CutwaterRenameAll & vbLf & "Stopped before the end: " & stopped
    If left_alone <> "" Then CutwaterRenameAll = CutwaterRenameAll & vbLf & "Left as they were:" & left_alone
End Function

Private Sub CutwaterRenameSheet(ByVal sheet As Object, ByVal full As Boolean, ByRef changed As Long, _
    ByRef left_alone As String)
    Dim cell As Object
    Dim whole As Object
    Dim made As String
    For Each cell In sheet.UsedRange.Cells
        If cell.HasFormula Then
            made = CutwaterRenamed(cell.Formula, full)
            If made <> cell.Formula Then
                Set whole = cell
                If cell.HasArray Then Set whole = cell.CurrentArray
                If whole.Row = cell.Row And whole.Column = cell.Column Then
                    If CutwaterPut(cell, whole, full) Then
                        changed = changed + 1
                    Else
                        left_alone = left_alone & vbLf & sheet.Name & "!" & cell.Address
                    End If
                End If
            End If
        End If
    Next
End Sub

' A block entered with Ctrl+Shift+Enter is put as a block, which Excel does for formulas of up to 255 characters.
' Elsewhere Formula2, where Excel has it: by Formula alone it would no longer let results spill.
Private Function CutwaterPut(ByVal cell As Object, ByVal whole As Object, ByVal full As Boolean) As Boolean
    On Error Resume Next
    If cell.HasArray Then
        whole.FormulaArray = CutwaterRenamed(cell.Formula, full)
    Else
        cell.Formula2 = CutwaterRenamed(cell.Formula2, full)
        If Err.Number <> 0 Then
            Err.Clear
            cell.Formula = CutwaterRenamed(cell.Formula, full)
        End If
    End If
    CutwaterPut = Err.Number = 0
End Function

' Between blanks, for InStr.
Private Function CutwaterKnown() As String
    Static known As String
    If known = "" Then
        known = " "
)bas";

std::vector<Product> names_module()
{
    std::string text = "Attribute VB_Name = \"cutwater_names\"\n";
    put(text, "' {}.\n{}", made_by, head);
    std::string line;
    const auto end_line = [&] {
        if (!line.empty()) put(text, "        known = known & \"{}\"\n", line);
        line.clear();
    };
    const auto add = [&](std::string_view name) {
        if (line.size() + name.size() > longest_line - 32) end_line();
        line += capitals(name) + ' ';
    };
    for (const QuestionInfo& q : questions()) add(q.name);
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions) add(f->name);
    end_line();
    text += "    End If\n    CutwaterKnown = known\nEnd Function\n";
    std::string lines;  // ended as Visual Basic's editor wants to read them
    for (const char c : text) lines += c == '\n' ? std::string("\r\n") : std::string(1, c);
    return {{"excel/cutwater_names.bas", lines}};
}

const Registered registered(names_module);

}  // namespace
}  // namespace cutwater::generate
