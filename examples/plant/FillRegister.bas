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
  DataKeys = Data.getCellRangeByName("A1:A200").getDataArray()
  CheckKeys = checks.getCellRangeByName("A1:A200").getDataArray()
  row = 3
  Column = FIRST_COLUMN
  Do While target.getCellByPosition(0, row).String <> "All"
    target.getCellRangeByPosition(0, row, UBound(wanted) + 2, row).clearContents(1 + 2 + 4 + 16)
    If Trim(Word("tag")) <> "" Then
      target.getCellByPosition(0, row).String = Trim(Word("tag"))
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
  Dim altitude, ambient, surface, density, vapour, viscosity, best_head, best_efficiency, b, solids, head_ratio, efficiency_ratio, best_flow
  Dim wanted, suction_pipe, suction_fittings, suction_loss, discharge_pipe, discharge_fittings, line_loss, resistance, system_head
  Dim suction_reynolds, discharge_reynolds, square, square_part, beside, equipment, static_head
  Dim flow, head, loss, offered, npsh3, ratio, efficiency, power, fitted, least, needed, region, shape, inner
  Dim left_out  ' never set: an optional argument that is not given
  On Error Resume Next
  altitude = RowOf(DataKeys, "altitude")
  ambient = Calc.BAROMETRIC_PRESSURE(Data.getCellRangeByPosition(FIRST_COLUMN, altitude, FIRST_COLUMN, altitude).getDataArray())
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

  ' The curve on the liquid pumped. Each ordinate has its own first and last point.
  Dim flows, heads, efficiencies, npsh3s, corrected, point, at_flow, flow_ratio, at_best, runs
  flows = Series("flows") : heads = Series("heads") : efficiencies = Series("efficiencies") : npsh3s = Series("npsh3s")
  best_head = Calc.CURVE_HEAD(Between(flows, heads), Between(heads, heads), Given("best_flow"))
  best_efficiency = Calc.CURVE_EFFICIENCY(Between(flows, efficiencies), Between(efficiencies, efficiencies), Given("best_flow"))
  at_best = Calc.CURVE_NPSH3(Between(flows, npsh3s), Between(npsh3s, npsh3s), Given("best_flow"))
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
    flow_ratio = Calc.VISCOUS_FLOW_RATIO(b)
    head_ratio = Calc.VISCOUS_HEAD_RATIO(b, 1)
    corrected = Calc.VISCOUS_PERFORMANCE(Given("best_flow"), best_head, best_efficiency, Given("best_flow"), best_head, best_efficiency, Given("speed"), viscosity, density, left_out, left_out, left_out)
    If IsArray(corrected) Then best_flow = corrected(0)(0)
  End If
  For point = 0 To POINTS - 1
    ' What is not overwritten below makes the whole curve refused: left empty it would only be a shorter curve.
    used_flows(point) = IIf(flows(point)(0) = "", "", REFUSED) : used_heads(point) = IIf(heads(point)(0) = "", "", REFUSED)
    used_efficiencies(point) = IIf(efficiencies(point)(0) = "", "", REFUSED) : used_npsh3s(point) = IIf(npsh3s(point)(0) = "", "", REFUSED)
    at_flow = left_out  ' in an index what was never set gives no error, so nothing may stay from the point before
    If flows(point)(0) <> "" Then at_flow = Calc.QUANTITY(flows(point)(0), "m3/h")
    runs = False
    If Not IsEmpty(at_flow) Then runs = Word("correct_for") = "viscosity" And at_flow <> 0
    If runs Then
      corrected = left_out
      If heads(point)(0) <> "" And efficiencies(point)(0) <> "" Then
        corrected = Calc.VISCOUS_PERFORMANCE(flows(point)(0), heads(point)(0), efficiencies(point)(0), Given("best_flow"), best_head, best_efficiency, Given("speed"), viscosity, density, left_out, left_out, left_out)
        If IsArray(corrected) Then
          used_flows(point) = corrected(0)(0) : used_heads(point) = corrected(0)(1) : used_efficiencies(point) = corrected(0)(2)
        End If
      ElseIf Not IsEmpty(flow_ratio) Then
        used_flows(point) = at_flow * flow_ratio
      End If
    ElseIf KnownCorrection() And flows(point)(0) <> "" And Not IsEmpty(at_flow) Then
      used_flows(point) = at_flow
    End If
    If Word("correct_for") = "solids" And IsArray(corrected) Then
      If heads(point)(0) <> "" Then used_heads(point) = corrected(point)(1)
      If efficiencies(point)(0) <> "" Then used_efficiencies(point) = corrected(point)(2)
    ElseIf KnownCorrection() And Word("correct_for") <> "solids" And Not runs Then
      If heads(point)(0) <> "" Then used_heads(point) = Calc.QUANTITY(heads(point)(0), "m")
      If efficiencies(point)(0) <> "" Then used_efficiencies(point) = Calc.QUANTITY(efficiencies(point)(0), "-")
    End If
    If npsh3s(point)(0) <> "" And KnownCorrection() Then
      If Word("correct_for") = "viscosity" Then
        used_npsh3s(point) = Calc.NPSH3_WITH_VISCOSITY(npsh3s(point)(0), at_best, head_ratio, Given("best_flow"), Given("speed"), Given("inlet"))
      Else
        used_npsh3s(point) = Calc.QUANTITY(npsh3s(point)(0), "m")
      End If
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
  ' The square law holds where both lines are turbulent; else the system's curve is found point by point.
  suction_reynolds = Calc.REYNOLDS_NUMBER(Given("flow"), Given("suction_bore"), viscosity)
  discharge_reynolds = Calc.REYNOLDS_NUMBER(Given("flow"), Given("discharge_bore"), viscosity)
  If Not IsEmpty(suction_reynolds) And Not IsEmpty(discharge_reynolds) Then square = suction_reynolds >= 4000 And discharge_reynolds >= 4000
  equipment = Calc.QUANTITY(Given("equipment_loss"), "m")
  If Not IsEmpty(equipment) And Not IsEmpty(suction_fittings) And Not IsEmpty(discharge_fittings) Then square_part = Calc.SYSTEM_RESISTANCE(Given("flow"), suction_fittings + discharge_fittings + equipment)
  Dim system_heads(POINTS - 1)
  If square Then
    flow = Calc.DUTY_FLOW(Between(used_flows, heads), Between(used_heads, heads), Given("static_head"), resistance)
    head = Calc.DUTY_HEAD(Between(used_flows, heads), Between(used_heads, heads), Given("static_head"), resistance)
    loss = Calc.SYSTEM_HEAD(0, Calc.SYSTEM_RESISTANCE(Given("flow"), suction_loss), flow)
  ElseIf Not IsEmpty(square) Then
    static_head = Calc.QUANTITY(Given("static_head"), "m")
    For point = 0 To POINTS - 1
      system_heads(point) = IIf(flows(point)(0) = "", "", REFUSED)
      If used_flows(point) <> "" And used_flows(point) <> REFUSED Then
        inner = left_out : beside = left_out
        inner = Calc.PIPE_FRICTION_HEAD(used_flows(point), Given("suction_bore"), Given("suction_length"), Given("roughness"), viscosity)
        beside = Calc.PIPE_FRICTION_HEAD(used_flows(point), Given("discharge_bore"), Given("discharge_length"), Given("roughness"), viscosity)
        If Not IsEmpty(inner) And Not IsEmpty(beside) Then system_heads(point) = Calc.SYSTEM_HEAD(static_head + inner + beside, square_part, used_flows(point))
      End If
    Next point
    corrected = left_out
    corrected = Calc.DUTY_ON_SYSTEM_POINTS(Between(used_flows, heads), Between(used_heads, heads), used_flows, system_heads, 1)
    If IsArray(corrected) Then
      flow = corrected(0)(0) : head = corrected(0)(1)
    End If
    inner = left_out : beside = left_out
    inner = Calc.PIPE_FRICTION_HEAD(flow, Given("suction_bore"), Given("suction_length"), Given("roughness"), viscosity)
    beside = Calc.FITTING_HEAD(flow, Given("suction_bore"), Given("suction_k"))
    If Not IsEmpty(inner) And Not IsEmpty(beside) Then loss = inner + beside
  End If

  ' At the duty.
  offered = Calc.NPSH_AVAILABLE(surface, vapour, density, Given("liquid_level"), loss)
  npsh3 = Calc.CURVE_NPSH3(Between(used_flows, npsh3s), Between(used_npsh3s, npsh3s), flow)
  ratio = Calc.NPSH_MARGIN_RATIO(offered, npsh3)
  efficiency = Calc.CURVE_EFFICIENCY(Between(used_flows, efficiencies), Between(used_efficiencies, efficiencies), flow)
  power = Calc.PUMP_POWER_INPUT(flow, head, density, efficiency)
  needed = First(Calc.MOTOR_RATING_NEEDED(power, Given("motor_rule"), Given("motor_series")))
  fitted = Calc.QUANTITY(Given("motor_rating"), "kW")
  least = Calc.MOTOR_POWER_MARGIN(fitted, Given("motor_rule"))
  If Not IsEmpty(needed) And Not IsEmpty(least) Then
    If fitted < needed And least * power <= fitted Then needed = fitted  ' 20 hp are 14.9 kW, and no listed rating
  End If
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

Function KnownCorrection() As Boolean
  KnownCorrection = Word("correct_for") = "nothing" Or Word("correct_for") = "viscosity" Or Word("correct_for") = "solids"
End Function

' Of a series what lies between the first and the last cell that is given in another: a block of cells, or a list.
Function Between(series, given)
  Dim from_place, to_place, i
  from_place = -1
  For i = 0 To POINTS - 1
    If given(i)(0) <> "" Then
      If from_place < 0 Then from_place = i
      to_place = i
    End If
  Next i
  If from_place < 0 Then
    Between = Array("")
    Exit Function
  End If
  Dim found()
  ReDim found(to_place - from_place)
  For i = from_place To to_place
    If IsArray(series(i)) Then found(i - from_place) = series(i)(0) Else found(i - from_place) = series(i)
  Next i
  Between = found
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
