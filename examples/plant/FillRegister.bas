' Fills the sheet Macro: the register's numbers, found from the sheet Data by calling the component's service from Basic,
' and compared with the cells of the sheet Checks. Any number that is not the same to the last bit is reported.
Option Explicit

Const FIRST_COLUMN = 3  ' D, the first pump
Const POINTS = 10
Const REFUSED = "refused"  ' no number: a series that holds it is refused

Private Calc As Object, Data As Object, Column As Long
Private DataKeys, CheckKeys

Sub FillRegister
  Dim sheets, checks, target, found, row, index, places
  Dim wanted : wanted = Array("wanted", "system_head", "duty_flow", "duty_head", "efficiency", "npsh_available", _
    "npsh3", "npsh_ratio", "power_input", "motor_needed", "motor_fitted", "region")
  Dim differing, compared, line_differs
  Calc = createUnoService("org.cutwater.Calc")
  sheets = ThisComponent.Sheets
  Data = sheets.getByName("Data")
  checks = sheets.getByName("Checks")
  target = sheets.getByName("Macro")
  DataKeys = Data.getCellRangeByName("A1:A120").getDataArray()
  CheckKeys = checks.getCellRangeByName("A1:A120").getDataArray()
  row = 3
  Column = FIRST_COLUMN
  Do While target.getCellByPosition(0, row).String <> "All" And row < 40
    target.getCellRangeByPosition(0, row, UBound(wanted) + 2, row).clearContents(1 + 2 + 4 + 16)
    If Word("tag") <> "" Then
      target.getCellByPosition(0, row).String = Word("tag")
      target.getCellByPosition(1, row).String = Word("service")
      found = OnePump()
      line_differs = 0
      For index = 0 To UBound(wanted)
        Show(target.getCellByPosition(index + 2, row), found(index))
        compared = compared + 1
        If Not Same(found(index), checks.getCellByPosition(Column, RowOf(CheckKeys, wanted(index)))) Then line_differs = line_differs + 1
      Next index
      target.getCellByPosition(UBound(wanted) + 3, row).String = IIf(line_differs = 0, "same", "differs")
      differing = differing + line_differs
    End If
    Column = Column + 1
    row = row + 1
  Loop
  For row = row To row + 3
    If target.getCellByPosition(0, row).String = "All" Then
      target.getCellByPosition(1, row).String = CStr(compared) & " results, " & CStr(differing) & " differ"
      target.getCellByPosition(UBound(wanted) + 3, row).String = IIf(differing = 0 And compared > 0, "same", "differs")
    End If
  Next row
End Sub

' A refused call leaves its variable empty; what needs it is then refused as well.
Function OnePump()
  Dim ambient, surface, density, vapour, viscosity, best_head, best_efficiency, b, solids, head_ratio, efficiency_ratio, best_flow
  Dim wanted, suction_pipe, suction_fittings, suction_loss, discharge_pipe, discharge_fittings, line_loss, resistance, system_head
  Dim flow, head, loss, offered, npsh3, ratio, efficiency, power, fitted, needed, region, shape, inner
  Dim left_out  ' never set: an optional argument that is not given
  On Error Resume Next
  ambient = Calc.BAROMETRIC_PRESSURE(Data.getCellRangeByName("D3:D3").getDataArray())
  surface = Calc.ABSOLUTE_FROM_GAUGE(Given("surface_pressure"), ambient)
  Select Case Word("density_by")
    Case "water" : density = Calc.WATER_DENSITY(Given("temperature"), surface)
    Case "slurry" : density = Calc.SLURRY_DENSITY(Given("density"), Given("solids_density"), Given("solids_fraction"))
    Case "value" : density = Calc.QUANTITY(Given("density"), "kg/m3")
  End Select
  Select Case Word("vapour_by")
    Case "water" : vapour = Calc.WATER_VAPOUR_PRESSURE(Given("temperature"))
    Case "two points" : vapour = Calc.VAPOUR_PRESSURE_TWO_POINT(Given("vapour_t1"), Given("vapour_p1"), Given("vapour_t2"), Given("vapour_p2"), Given("temperature"))
    Case "value" : vapour = Calc.QUANTITY(Given("vapour_pressure"), "bara")
  End Select
  Select Case Word("viscosity_by")
    Case "water" : viscosity = Calc.WATER_KINEMATIC_VISCOSITY(Given("temperature"), surface)
    Case "two points" : viscosity = Calc.VISCOSITY_AT_TEMPERATURE(Given("viscosity_t1"), Given("viscosity_1"), Given("viscosity_t2"), Given("viscosity_2"), Given("temperature"))
    Case "value" : viscosity = Calc.QUANTITY(Given("viscosity"), "mm2/s")
  End Select

  ' The curve on the liquid pumped.
  Dim flows, heads, efficiencies, npsh3s, corrected, point, at_flow
  flows = Series("flows") : heads = Series("heads") : efficiencies = Series("efficiencies") : npsh3s = Series("npsh3s")
  best_head = Calc.CURVE_HEAD(flows, heads, Given("best_flow"))
  best_efficiency = Calc.CURVE_EFFICIENCY(flows, efficiencies, Given("best_flow"))
  If Word("correct_for") = "nothing" Or Word("correct_for") = "solids" Then best_flow = Calc.QUANTITY(Given("best_flow"), "m3/h")
  If Word("correct_for") = "solids" Then
    solids = Calc.RELATIVE_DENSITY(Given("solids_density"), Given("density"))
    head_ratio = Calc.SLURRY_HEAD_RATIO(Given("solids_fraction"), solids, Given("solids_size"), Given("impeller_diameter"), Given("slurry_by"))
    efficiency_ratio = Calc.SLURRY_EFFICIENCY_RATIO(Given("solids_fraction"), solids, Given("solids_size"), Given("impeller_diameter"), Given("slurry_by"))
    corrected = Calc.CURVE_SLURRY(flows, heads, efficiencies, head_ratio, efficiency_ratio)
  End If
  Dim used_flows(POINTS - 1), used_heads(POINTS - 1), used_efficiencies(POINTS - 1), used_npsh3s(POINTS - 1)
  If Word("correct_for") = "viscosity" Then
    b = Calc.VISCOSITY_PARAMETER(viscosity, Given("best_flow"), best_head, Given("speed"))
    head_ratio = Calc.VISCOUS_HEAD_RATIO(b, 1)
    corrected = Calc.VISCOUS_PERFORMANCE(Given("best_flow"), best_head, best_efficiency, Given("best_flow"), best_head, best_efficiency, Given("speed"), viscosity, density, left_out, left_out, left_out)
    If IsArray(corrected) Then best_flow = corrected(0)(0)
  End If
  For point = 0 To POINTS - 1
    used_flows(point) = "" : used_heads(point) = "" : used_efficiencies(point) = "" : used_npsh3s(point) = ""
    If flows(point)(0) <> "" Then
      ' What is not overwritten below makes the whole curve refused: left empty it would only be a shorter curve.
      used_flows(point) = REFUSED : used_heads(point) = REFUSED : used_efficiencies(point) = REFUSED : used_npsh3s(point) = REFUSED
      at_flow = left_out  ' in an index what was never set gives no error, so nothing may stay from the point before
      at_flow = Calc.QUANTITY(flows(point)(0), "m3/h")
      Select Case Word("correct_for")
        Case "nothing", "solids"
          used_flows(point) = at_flow
          used_npsh3s(point) = Calc.QUANTITY(npsh3s(point)(0), "m")
        Case "viscosity"
          used_npsh3s(point) = Calc.NPSH3_WITH_VISCOSITY(npsh3s(point)(0), Calc.CURVE_NPSH3(flows, npsh3s, Given("best_flow")), head_ratio, Given("best_flow"), Given("speed"), Given("inlet"))
      End Select
      Select Case Word("correct_for") & IIf(at_flow = 0, " at no flow", "")
        Case "nothing", "nothing at no flow", "viscosity at no flow"
          used_flows(point) = at_flow
          used_heads(point) = Calc.QUANTITY(heads(point)(0), "m")
          used_efficiencies(point) = Calc.QUANTITY(efficiencies(point)(0), "-")
        Case "solids", "solids at no flow"
          If IsArray(corrected) Then
            used_heads(point) = corrected(point)(1) : used_efficiencies(point) = corrected(point)(2)
          End If
        Case "viscosity"
          corrected = left_out
          corrected = Calc.VISCOUS_PERFORMANCE(flows(point)(0), heads(point)(0), efficiencies(point)(0), Given("best_flow"), best_head, best_efficiency, Given("speed"), viscosity, density, left_out, left_out, left_out)
          If IsArray(corrected) Then
            used_flows(point) = corrected(0)(0) : used_heads(point) = corrected(0)(1) : used_efficiencies(point) = corrected(0)(2)
          End If
      End Select
      If IsEmpty(at_flow) Then used_flows(point) = REFUSED
    End If
  Next point

  ' The system at the flow wanted, then the duty.
  wanted = Calc.QUANTITY(Given("flow"), "m3/h")
  suction_pipe = Calc.PIPE_FRICTION_HEAD(Given("flow"), Given("suction_bore"), Given("suction_length"), Given("roughness"), viscosity)
  suction_fittings = Calc.FITTING_HEAD(Given("flow"), Given("suction_bore"), Given("suction_k"))
  suction_loss = Calc.SYSTEM_HEAD(suction_pipe, Calc.SYSTEM_RESISTANCE(Given("flow"), suction_fittings), Given("flow"))
  discharge_pipe = Calc.PIPE_FRICTION_HEAD(Given("flow"), Given("discharge_bore"), Given("discharge_length"), Given("roughness"), viscosity)
  discharge_fittings = Calc.FITTING_HEAD(Given("flow"), Given("discharge_bore"), Given("discharge_k"))
  inner = Calc.SYSTEM_HEAD(suction_loss, Calc.SYSTEM_RESISTANCE(Given("flow"), discharge_pipe), Given("flow"))
  line_loss = Calc.SYSTEM_HEAD(inner, Calc.SYSTEM_RESISTANCE(Given("flow"), discharge_fittings), Given("flow"))
  inner = Calc.SYSTEM_HEAD(line_loss, Calc.SYSTEM_RESISTANCE(Given("flow"), Given("equipment_loss")), Given("flow"))
  resistance = Calc.SYSTEM_RESISTANCE(Given("flow"), inner)
  system_head = Calc.SYSTEM_HEAD(Given("static_head"), resistance, Given("flow"))
  flow = Calc.DUTY_FLOW(used_flows, used_heads, Given("static_head"), resistance)
  head = Calc.DUTY_HEAD(used_flows, used_heads, Given("static_head"), resistance)

  ' At the duty.
  loss = Calc.SYSTEM_HEAD(0, Calc.SYSTEM_RESISTANCE(Given("flow"), suction_loss), flow)
  offered = Calc.NPSH_AVAILABLE(surface, vapour, density, Given("liquid_level"), loss)
  npsh3 = Calc.CURVE_NPSH3(used_flows, used_npsh3s, flow)
  ratio = Calc.NPSH_MARGIN_RATIO(offered, npsh3)
  efficiency = Calc.CURVE_EFFICIENCY(used_flows, used_efficiencies, flow)
  power = Calc.PUMP_POWER_INPUT(flow, head, density, efficiency)
  needed = First(Calc.MOTOR_RATING_NEEDED(power, Given("motor_rule"), Given("motor_series")))
  fitted = Calc.QUANTITY(Given("motor_rating"), "kW")
  ' The region goes by the impeller's whole flow, both eyes together.
  shape = Calc.SPECIFIC_SPEED(Given("speed"), Given("best_flow"), best_head, 1, Given("stages"))
  region = First(Calc.OPERATING_REGION(flow, best_flow, shape, Given("least_allowed"), Given("greatest_allowed")))
  OnePump = Array(wanted, system_head, flow, head, efficiency, offered, npsh3, ratio, power, needed, fitted, region)
End Function

' A cell of Data as a range of one cell: an empty cell is then told from zero.
Function Given(key)
  Dim row : row = RowOf(DataKeys, key)
  Given = Data.getCellRangeByPosition(Column, row, Column, row).getDataArray()
End Function

Function Word(key) As String
  Word = Data.getCellByPosition(Column, RowOf(DataKeys, key)).String
End Function

Function Series(key)
  Dim row : row = RowOf(DataKeys, key & " 1")
  Series = Data.getCellRangeByPosition(Column, row, Column, row + POINTS - 1).getDataArray()
End Function

' The first of several results.
Function First(answer)
  If IsArray(answer) Then First = answer(0)(0) Else First = answer
End Function

Function RowOf(keys, key)
  Dim row
  For row = 0 To UBound(keys)
    If keys(row)(0) = key Then
      RowOf = row
      Exit Function
    End If
  Next row
  Error 5
End Function

Sub Show(cell, result)
  If IsEmpty(result) Then
    cell.String = "refused"
  ElseIf VarType(result) = 8 Then
    cell.String = result
  Else
    cell.Value = result
  End If
End Sub

Function Same(result, cell) As Boolean
  If IsEmpty(result) Then
    Same = cell.getError() <> 0
  ElseIf VarType(result) = 8 Then
    Same = cell.getError() = 0 And cell.String = result
  Else
    Same = cell.getError() = 0 And cell.Value = result
  End If
End Function
