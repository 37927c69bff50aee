// The numbers that the red flags use, each with where it comes from; source ids are those of sources.json. Degrees and degrees
// Celsius in tenths, ages in completed years, durations in weeks as the catalogue asks them.
#pragma once

#include <array>
#include <cstdint>

namespace limbledger::interpret {

// Breaths and pulse in a minute from which a child counts as raised, and as in danger by itself; `to` in completed years.
struct ChildSigns {
  std::int64_t to, breaths_raised, breaths_high, pulse_raised, pulse_high;
};
// NICE_NG51: moderate to high, and high risk. The first entry whose years hold the whole age is taken.
inline constexpr std::array<ChildSigns, 6> child_signs{{{0, 50, 60, 150, 160}, {2, 40, 50, 140, 150}, {4, 35, 40, 130, 140},
                                                        {5, 24, 29, 120, 130}, {7, 24, 27, 110, 120}, {11, 22, 25, 105, 115}}};

inline constexpr std::int64_t child_under = 16;             // CONVENTION: below it the hip is looked at in every knee
inline constexpr std::int64_t femur_break_months = 18;      // red flags page, inflicted injury: from memory
inline constexpr std::int64_t fever_tenths = 380;           // red flags page, bone infection: taught value
inline constexpr std::int64_t fever_child_tenths = 385;     // LIMP_RCHT
inline constexpr std::int64_t temperature_low_tenths = 360; // WSES2018 as restated on the red flags page: below it, a sign of sepsis
inline constexpr std::int64_t pulse_sepsis_over = 90;       // the same
inline constexpr std::int64_t pulse_clot_over = 100;        // red flags page, clot of the lung
inline constexpr std::int64_t abi_hundredths = 90;          // MILLS2004: below 0.90
inline constexpr std::int64_t short_history_weeks = 2;      // BSR2006 short history, ESVS2020 under two weeks
inline constexpr std::int64_t lately_weeks = 6;             // CONVENTION, after LOCKED_RCH: an injury this old or younger explains today's knee
inline constexpr std::int64_t left_alone_weeks = 26;         // CONVENTION: up to half a year what an injury left out of place or blocked is a referral of its own
inline constexpr std::int64_t lump_weeks = 6;               // CONVENTION: a film of what stays this long in the young
inline constexpr std::int64_t young_under = 25;             // NICE_NG12
inline constexpr std::int64_t hip_fracture_from = 60;       // red flags page, hip fracture: age gate from memory
inline constexpr std::int64_t slip_from = 6, slip_to = 18;  // SCFE_GB2022: the cohort's ages
inline constexpr std::int64_t perthes_from = 4, perthes_to = 10;    // RCH_LIMP
inline constexpr std::int64_t flexion_restricted = 1100;    // CONVENTION: less does not rise from a low seat
inline constexpr std::int64_t rotation_lost_at = 100;       // CONVENTION: inward rotation of 10 degrees or less counts as lost
inline constexpr std::int64_t rotation_free_from = 200;     // CONVENTION: less than 20 degrees on both sides is no proof that neither lost any
inline constexpr std::int64_t severe_pain = 7;              // CONVENTION, of 10
inline constexpr std::int64_t stiffness_minutes = 30;       // ALTMAN1986: longer is not wear
inline constexpr std::int64_t wells_likely = 2;             // WELLS2003, NICE_NG158
inline constexpr std::int64_t wells_from = 18;              // NICE_QS201
inline constexpr std::int64_t diabetes_long_years = 10;     // CONVENTION: diabetes this long stands for ill nerves while nobody tried them
inline constexpr std::int64_t feet_differ_tenths = 20;      // red flags page, Charcot foot: 2 degrees between the feet, from memory
inline constexpr std::int64_t redness_mild_mm = 20;         // IWGDF_IDSA_DFI: up to 2 cm is mild
inline constexpr std::int64_t fever_wound_tenths = 381;     // IWGDF_IDSA_DFI and WSES2018: above 38.0
inline constexpr std::int64_t breaths_over = 20;            // the same: a sign to be counted with others
inline constexpr std::int64_t breaths_fast_from = 25;       // NICE_NG51: an adult's, high risk by itself; 21 to 24 is not
inline constexpr std::int64_t white_cells_over = 12000;     // IWGDF_IDSA_DFI, in a microlitre
inline constexpr std::int64_t white_cells_under = 4000;     // the same
inline constexpr std::int64_t systolic_under = 90;          // WSES2018: a sign to be counted with others
inline constexpr std::int64_t systolic_failing_under = 91;  // NICE_NG51: 90 or below, high risk by itself, from 12 years
inline constexpr std::int64_t systolic_low_to = 100;        // NICE_NG51: 91 to 100, moderate to high risk from 12 years
inline constexpr std::int64_t saturation_under = 92;        // NICE_NG51: an adult's; the tables of children call from 90, asked about from 92
inline constexpr std::int64_t saturation_child_under = 90;  // NICE_NG51: high risk at any age of its tables of children
inline constexpr std::int64_t saturation_old_lungs = 88;    // NICE_NG51: enough where a lung disease is known
inline constexpr std::int64_t breaths_not_of_old_lungs = 30;  // CONVENTION: from here in a grown person no old lung is thought of
inline constexpr std::int64_t pulse_racing_from = 130;      // NICE_NG51: high risk by itself
inline constexpr std::int64_t pulse_counts_over = 100;      // CONVENTION: NICE_NG51 counts from 91, in pregnancy from 100; hurry and fear have that
inline constexpr std::int64_t pulse_of_pain_to = 120;       // CONVENTION: up to it pain, fear and cold make the pulse of who is well and whose pressure holds
inline constexpr std::int64_t pulse_of_faint_under = 60;    // CONVENTION: a faint slows the heart while the pressure falls, blood lost does not
inline constexpr std::int64_t pulse_slow_under = 40;        // CONVENTION, the catalogue asks back below it: an athlete's too, so it counts beside low pressure alone
inline constexpr std::int64_t saturation_pregnant_under = 95;  // taught value, from memory: charts of early warning in pregnancy; beside a fast pulse alone
inline constexpr std::int64_t chilled_under_tenths = 350;   // taught value, from memory: too cold a body begins below 35.0
// So far out that it is a danger whatever else is answered (CONVENTION throughout).
inline constexpr std::int64_t systolic_alone_under = 80, systolic_child_alone_less = 10;  // of a child: less than its own limit by this
inline constexpr std::int64_t breaths_alone_from = 36, breaths_child_alone_from = 80, breaths_alone_under = 8;
inline constexpr std::int64_t pulse_alone_from = 150, pulse_child_alone_from = 220, pulse_alone_under = 30;
inline constexpr std::int64_t saturation_alone_under = 85;  // lower than thin air has it where people live
inline constexpr std::int64_t cold_alone_under_tenths = 340, hot_alone_from_tenths = 410;
inline constexpr std::int64_t adult_signs_from = 12;        // NICE_NG51: its tables of children end here
inline constexpr std::int64_t pulse_child_under = 60;       // NICE_NG51: high risk below it at any age of its tables of children
inline constexpr std::int64_t cold_child_under_years = 5;   // NICE_NG51: below 36.0 is high risk there, a lesser sign later
inline constexpr std::int64_t newborn_under_months = 3;  // NICE_NG51: under it 38.0 or more is high risk
inline constexpr std::int64_t newborn_mass_to = 120, newborn_under_weeks = 14;  // CONVENTION: no infant of three months weighs more (tenths of a kg); no trouble is older than it
inline constexpr std::int64_t systolic_child_under = 70;    // LOWPRESSURE_2019: and two more a year of age, under 10
inline constexpr std::int64_t systolic_adult_from = 10;     // the same
inline constexpr std::int64_t crp_over = 20;                // CAIRD2006, CRP20_BSCOS: mg in a litre
inline constexpr std::int64_t abduction_least = 60;         // RACGP_DDH: with the hip bent, after three months
inline constexpr std::int64_t abduction_differs = 20;       // CONVENTION: less than on the other side by this much
inline constexpr std::int64_t abduction_from_months = 3, abduction_to_months = 23;  // RACGP_DDH; the upper end is a convention
inline constexpr std::int64_t late_dislocation_to = 5;      // CONVENTION: sought up to the sixth birthday
inline constexpr std::int64_t ultrasound_to_months = 5;     // RACGP_DDH: ultrasound to six months, then film
inline constexpr std::int64_t lump_over_mm = 50;            // NICE_NG12, SCOT_SARCOMA: more than 5 cm
inline constexpr std::int64_t limp_unseen_days = 7;         // LIMP_RCHT: longer and never looked at
inline constexpr std::int64_t limp_undiagnosed_days = 14;   // LIMP_RCHT: longer and without a diagnosis
inline constexpr std::int64_t tells_of_pain_from = 3;       // CONVENTION: younger, nobody tells what exceeds a hurt
inline constexpr std::int64_t walks_not_before_months = 12;  // CONVENTION: younger, nobody is asked for steps
inline constexpr std::int64_t walks_from = 2;                // CONVENTION: younger, being carried says nothing
inline constexpr std::int64_t walks_by_months = 18;          // CONVENTION: until then crawling is no loss of walking; later the child may have walked before
inline constexpr std::int64_t bladder_left_ml = 200;        // CES_GIRFT: what stays behind after voiding; less does not exclude
inline constexpr std::int64_t toe_goes_up_to = 1;           // CONVENTION: in completed years, the great toe of small children goes up anyway
inline constexpr std::int64_t calf_fuller_mm = 20;          // CONVENTION: a calf this much thicker opens the question of a clot

}  // namespace limbledger::interpret
