#include "macro_runtime.hpp"

namespace cutwater::generate {

const std::string_view macro_head =
    R"bas(' Checked pump calculations in the macros of 64-bit Excel for Windows. Import this file into a workbook
' that lies in the folder of cutwater.dll, or of which CutwaterLoad is told where that lies.
'
'   Debug.Print NPSH_AVAILABLE(1.013, "23.4 mbar(a)", 998.2, "6 ft", 0.5)
'   Debug.Print CURVE_VALUE(Array(0, 50, 100), Range("B2:B4"), 75)
'   Debug.Print WORKING("npsh_available", 1.013, 0.0234, 998.2, 2, 0.5)
'
' A number has the unit that the input's name ends in; a text brings its own. A series is an array or a range. Several
' results come as an array with two indices from 1, as a range's Value does, with #N/A (IsError) where there is nothing.
' A refused call raises the error CutwaterRefused + status; Err.Description is the whole sentence. An argument before
' others is left out by Empty.
'
' The functions that begin with cutwater_ are the C library's own, for loops that must be fast: numbers alone, and a
' status for an error. Call CutwaterLoad before the first of them.
Option Explicit
Option Private Module

Public Const CutwaterRefused As Long = -2147220504 ' vbObjectError + 1000

' As the C library fills it; CutwaterSentence gives its message as a text.
Public Type cutwater_refusal
    status As Long
    argument As Long
    element As LongPtr
    value As Double
    low As Double
    high As Double
    low_open As Long
    high_open As Long
    name(0 To 47) As Byte
    unit(0 To 31) As Byte
    message(0 To 511) As Byte
End Type

Private Declare PtrSafe Function LoadLibraryW Lib "kernel32" (ByVal file As LongPtr) As LongPtr
Private Declare PtrSafe Function MultiByteToWideChar Lib "kernel32" (ByVal page As Long, ByVal flags As Long, _
    ByRef bytes As Byte, ByVal length As Long, ByVal units As LongPtr, ByVal room As Long) As Long
Private Declare PtrSafe Function cutwater_macro_call Lib "cutwater.dll" (ByRef called As Variant, _
    ByRef given As Variant, ByRef answer As Variant, ByRef sentence As Variant) As Long
Public Declare PtrSafe Function cutwater_left_out Lib "cutwater.dll" () As Double
)bas";

const std::string_view macro_body = R"bas(
' Loads cutwater.dll from the workbook's folder, or from another. Every function below does so by itself.
Public Sub CutwaterLoad(Optional ByVal folder As String = "")
    Static loaded As Boolean
    Dim file As String
    If loaded Then Exit Sub
    If folder = "" Then folder = ThisWorkbook.Path
    If folder = "" Then CutwaterFail "Save this workbook in the folder of cutwater.dll first."
    If InStr(folder, "://") > 0 Then CutwaterFail "This workbook was opened from " & folder & _
        "; cutwater.dll can be loaded from a folder of this computer only. Save the workbook beside it."
    file = folder & "\cutwater.dll"
    ' Without Dir, which would end a search by Dir of the caller's, and knows the letters of one code page only.
    If LoadLibraryW(StrPtr(file)) = 0 Then
        Select Case Err.LastDllError
        Case 2, 3, 53, 126
            CutwaterFail "cutwater.dll was not found in " & folder & _
                ". It must lie beside this workbook, or CutwaterLoad be told where it lies."
        Case 193
            CutwaterFail file & " could not be loaded: it needs 64-bit Excel."
        Case Else
            CutwaterFail file & " could not be loaded (Windows' error " & Err.LastDllError & _
                "). See whether the file's properties say that it is blocked."
        End Select
    End If
    loaded = True
End Sub

' The sentence of a refusal that one of the C library's functions filled.
Public Function CutwaterSentence(ByRef refusal As cutwater_refusal) As String
    Dim length As Long
    Dim text As String
    Do While length < 511 And refusal.message(length) <> 0
        length = length + 1
    Loop
    If length = 0 Then Exit Function
    text = String(length, " ")
    length = MultiByteToWideChar(65001, 0, refusal.message(0), length, StrPtr(text), length)
    CutwaterSentence = Left(text, length)
End Function

Private Sub CutwaterFail(ByVal sentence As String)
    Err.Raise CutwaterRefused, "cutwater", sentence
End Sub

Private Function CutwaterAnswer(ByVal called As Variant, ByVal given As Variant) As Variant
    Dim answer As Variant
    Dim sentence As Variant
    Dim status As Long
    Dim i As Long
    CutwaterLoad
    For i = LBound(given) To UBound(given)
        If IsObject(given(i)) Then given(i) = CutwaterCells(given(i))
    Next
    status = cutwater_macro_call(called, given, answer, sentence)
    If status <> 0 Then Err.Raise CutwaterRefused + status, "cutwater", sentence
    CutwaterAnswer = answer
End Function

' What a range holds, as plain numbers and texts.
Private Function CutwaterCells(ByVal given As Object) As Variant
    If TypeName(given) <> "Range" Then CutwaterFail "An argument is an object of the kind " & TypeName(given) & _
        "; it must be a number, a text, an array or a range."
    If given.Areas.Count > 1 Then CutwaterFail "A range of several areas, " & given.Address & ", is no series."
    CutwaterCells = given.Value2
End Function

Private Function CutwaterJoined(ByVal first As Variant, ByVal rest As Variant) As Variant
    Dim joined() As Variant
    Dim own As Long
    Dim i As Long
    own = UBound(first) + 1
    ReDim joined(0 To own + UBound(rest) - LBound(rest))
    For i = 0 To UBound(first)
        If IsObject(first(i)) Then
            Set joined(i) = first(i)
        Else
            joined(i) = first(i)
        End If
    Next
    For i = LBound(rest) To UBound(rest)
        If IsObject(rest(i)) Then
            Set joined(own + i - LBound(rest)) = rest(i)
        Else
            joined(own + i - LBound(rest)) = rest(i)
        End If
    Next
    CutwaterJoined = joined
End Function
)bas";

}  // namespace cutwater::generate
