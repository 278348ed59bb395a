/* generated from the catalogue by cutwater-generate; do not edit. */
/* What the standards ask. */
#ifndef CUTWATER_FAMILIES_STANDARDS_H
#define CUTWATER_FAMILIES_STANDARDS_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * The number that a pump standard sets for an item, with its clause and how it was come by.
 *
 *   pump_standard                ISO 5199:2002, ISO 9905:1994, ISO 9908:1993, ISO 13709:2009 (= API 610 11th edition) or
 *                                ASME B73.1-2012; "ISO 5199", "ISO 9905", "ISO 9908", "ISO 13709" or "ASME B73.1"
 *   item                         what the limit is about; "shaft deflection at the seal", "shaft deflection at the
 *                                impeller", "shaft runout, below 50 mm", "shaft runout, 50 to 100 mm", "shaft runout,
 *                                above 100 mm", "bearing life, rated", "bearing life, worst load", "critical speed
 *                                ratio, running", "dry critical speed ratio, wet running", "dry critical speed ratio,
 *                                may run dry", "balance grade", "vibration, horizontal, preferred region", "vibration,
 *                                horizontal, allowable region", "hydrostatic test factor", "hydrostatic test time",
 *                                "corrosion allowance", "rated flow, least", "rated flow, greatest", "preferred region,
 *                                least", "preferred region, greatest", "head rise to shut-off", "head increase by
 *                                impeller", "rating margin", "nozzle loads, combined" or "nozzle loads, component"
 *   -> limit                     the number, in the unit that follows
 *   -> limit_unit                unit of the number; share: a part of the best efficiency flow, of the rated head or of
 *                                the greatest rise
 *   -> side                      at most or at least
 *   -> clause                    clause of the standard
 *   -> basis                     whether the clause's text was read, quoted by others, or remembered
 *
 *   Equation: table of standards and items
 *   Source: ISO 5199:2002, ISO 13709:2009 (API 610 11th edition), ASME B73.1-2012 (from memory of them); ISO 9908:1993,
 *           4.10 (excerpt read); of ISO 13709 second hand: flows, head rise, margins (an anonymous summary of API 610,
 *           read), bearing life (study texts), critical speeds (a digest of API 610 8th edition, 5.2.4.1.1, read; the
 *           clause of the 11th from memory), vibration (Europump, Guidelines on Pump Vibration 2013, as quoted); each
 *           answer says which
 *   Caution: Each number belongs to the edition named; newer editions (API 610 of 2021 and after) renumber and change.
 *            Read the clause itself before it goes into a contract: the answer tells how the number was come by.
 *   Caution: A clause carries conditions that a number leaves out: at which flows, loads and place it holds. The
 *            vibration of ISO 13709 held here is for horizontal pumps up to 300 kW a stage (from memory).
 */
CUTWATER_API cutwater_status cutwater_standard_limit(const char *pump_standard, const char *item, double *limit,
                                        const char **limit_unit, const char **side, const char **clause,
                                        const char **basis, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_standard_limit_rows(size_t rows, const char *pump_standard, const char *item,
                                             cutwater_result_column limit, cutwater_result_column limit_unit,
                                             cutwater_result_column side, cutwater_result_column clause,
                                             cutwater_result_column basis, cutwater_rows_report *report);

/*
 * A figure held against the number that a pump standard sets for it.
 *
 *   pump_standard                ISO 5199:2002, ISO 9905:1994, ISO 9908:1993, ISO 13709:2009 (= API 610 11th edition) or
 *                                ASME B73.1-2012; "ISO 5199", "ISO 9905", "ISO 9908", "ISO 13709" or "ASME B73.1"
 *   item                         what the limit is about; "shaft deflection at the seal", "shaft deflection at the
 *                                impeller", "shaft runout, below 50 mm", "shaft runout, 50 to 100 mm", "shaft runout,
 *                                above 100 mm", "bearing life, rated", "bearing life, worst load", "critical speed
 *                                ratio, running", "dry critical speed ratio, wet running", "dry critical speed ratio,
 *                                may run dry", "balance grade", "vibration, horizontal, preferred region", "vibration,
 *                                horizontal, allowable region", "hydrostatic test factor", "hydrostatic test time",
 *                                "corrosion allowance", "rated flow, least", "rated flow, greatest", "preferred region,
 *                                least", "preferred region, greatest", "head rise to shut-off", "head increase by
 *                                impeller", "rating margin", "nozzle loads, combined" or "nozzle loads, component"
 *   value                        the figure, as a bare number in the unit that standard_limit tells; a share up to 2, a
 *                                ratio up to 50; at least 0
 *   -> verdict                   met or not met; a figure equal to the limit meets it
 *   -> limit                     the number that is set
 *   -> limit_unit                unit of both; share: a part of the best efficiency flow, of the rated head or of the
 *                                greatest rise
 *   -> side                      at most or at least
 *   -> clause                    clause of the standard
 *   -> basis                     whether the clause's text was read, quoted by others, or remembered
 *
 *   Equation: x <= limit or x >= limit, by the table of standards and items
 *   Source: ISO 5199:2002, ISO 13709:2009 (API 610 11th edition), ASME B73.1-2012 (from memory of them); ISO 9908:1993,
 *           4.10 (excerpt read); of ISO 13709 second hand: flows, head rise, margins (an anonymous summary of API 610,
 *           read), bearing life (study texts), critical speeds (a digest of API 610 8th edition, 5.2.4.1.1, read; the
 *           clause of the 11th from memory), vibration (Europump, Guidelines on Pump Vibration 2013, as quoted); each
 *           answer says which
 *   Caution: Each number belongs to the edition named; newer editions (API 610 of 2021 and after) renumber and change.
 *            Read the clause itself before it goes into a contract: the answer tells how the number was come by.
 *   Caution: A clause carries conditions that a number leaves out: at which flows, loads and place it holds. The
 *            vibration of ISO 13709 held here is for horizontal pumps up to 300 kW a stage (from memory).
 *   Caution: The figure is a bare number: give it in the unit named.
 */
CUTWATER_API cutwater_status cutwater_standard_check(const char *pump_standard, const char *item, double value,
                                        const char **verdict, double *limit, const char **limit_unit,
                                        const char **side, const char **clause, const char **basis,
                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_standard_check_rows(size_t rows, const char *pump_standard, const char *item,
                                             cutwater_column value, cutwater_result_column verdict,
                                             cutwater_result_column limit, cutwater_result_column limit_unit,
                                             cutwater_result_column side, cutwater_result_column clause,
                                             cutwater_result_column basis, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif
