#include "tests/unit/invented/edition.hpp"

#include <cstdlib>
#include <iostream>

namespace limbledger {

namespace {

constexpr std::string_view edition_text = R"({"edition":"invented.1","dated":"2001-01-01"})";

constexpr std::string_view items_text = R"({"items":[
{"item":"knee.flexion_active","family":"knee.flexion","region":"knee","sides":["left","right"],"value":"angle","axis":"flexion","end":"high","toward":"flexion","unit":"deg","refuse":[-30,170],"confirm":[0,165],"positions":["supine","prone"],"instruments":["goniometer_long","inclinometer","by_eye"],"trials_max":5,"of_trials":"mean","seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_flexion_active.short","how":"msg.item.knee_flexion_active.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.flexion_passive","family":"knee.flexion","region":"knee","sides":["left","right"],"value":"angle","axis":"flexion","end":"high","toward":"flexion","unit":"deg","refuse":[-30,170],"confirm":[0,165],"positions":["supine","prone"],"instruments":["goniometer_long","inclinometer","by_eye"],"trials_max":5,"of_trials":"mean","end_feels":["capsular_firm","springy_block"],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_flexion_passive.short","how":"msg.item.knee_flexion_passive.how","care":"msg.item.knee_flexion_passive.care"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.extension_active","family":"knee.extension","region":"knee","sides":["left","right"],"value":"angle","axis":"flexion","end":"low","toward":"extension","unit":"deg","refuse":[-30,170],"confirm":[-20,60],"positions":["supine"],"instruments":["goniometer_long","inclinometer","by_eye"],"trials_max":3,"of_trials":"best","seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_extension_active.short","how":"msg.item.knee_extension_active.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.extension_passive","family":"knee.extension","region":"knee","sides":["left","right"],"value":"angle","axis":"flexion","end":"low","toward":"extension","unit":"deg","refuse":[-30,170],"confirm":[-20,60],"positions":["supine"],"instruments":["goniometer_long","inclinometer","by_eye"],"trials_max":3,"of_trials":"mean","seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_extension_passive.short","how":"msg.item.knee_extension_passive.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.arc_passive","family":"knee.arc","region":"knee","sides":["left","right"],"value":"arc","axis":"flexion","arc":{"low":"knee.extension_passive","high":"knee.flexion_passive"},"unit":"deg","positions":["supine"],"instruments":["goniometer_long"],"seconds":30,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_arc_passive.short","how":"msg.item.knee_arc_passive.how"},"sources":["INVENTED1"],"status":"convention"},
{"item":"leg.invented_girth","family":"leg.invented_girth","region":"leg","sides":["left","right"],"value":"length","unit":"mm","refuse":[100,1000],"confirm":[200,900],"positions":["supine"],"instruments":["tape"],"trials_max":3,"of_trials":"mean","seconds":30,"discomfort":"none","safety":false,"text":{"short":"msg.item.leg_invented_girth.short","how":"msg.item.leg_invented_girth.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"function.invented_stance","family":"function.invented_stance","region":"function","sides":["left","right"],"value":"time","unit":"s","refuse":[0,3600],"confirm":[0,300],"trials_max":3,"of_trials":"best","seconds":30,"discomfort":"low","safety":false,"text":{"short":"msg.item.function_invented_stance.short","how":"msg.item.function_invented_stance.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"nerve.invented_push","family":"nerve.invented_push","region":"nerve","sides":["left","right"],"value":"force","unit":"n","refuse":[0,2000],"trials_max":3,"of_trials":"last","seconds":30,"discomfort":"some","safety":false,"text":{"short":"msg.item.nerve_invented_push.short","how":"msg.item.nerve_invented_push.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"vessel.invented_pressure","family":"vessel.invented_pressure","region":"vessel","sides":["left","right"],"value":"pressure","unit":"mm_hg","refuse":[0,350],"confirm":[30,260],"instruments":["doppler","cuff"],"seconds":30,"discomfort":"low","safety":true,"text":{"short":"msg.item.vessel_invented_pressure.short","how":"msg.item.vessel_invented_pressure.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"general.invented_heat","family":"general.invented_heat","region":"general","sides":["midline"],"value":"temperature","unit":"cel","refuse":[20,46],"confirm":[34,42],"seconds":30,"discomfort":"none","safety":true,"text":{"short":"msg.item.general_invented_heat.short","how":"msg.item.general_invented_heat.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"general.invented_mass","family":"general.invented_mass","region":"general","sides":["midline"],"value":"mass","unit":"kg","refuse":[0.4,400],"confirm":[2,200],"seconds":30,"discomfort":"none","safety":false,"text":{"short":"msg.item.general_invented_mass.short","how":"msg.item.general_invented_mass.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"gait.steps_now","family":"gait.steps","region":"gait","sides":["midline"],"value":"count","refuse":[0,4],"seconds":30,"discomfort":"some","safety":true,"text":{"short":"msg.item.gait_steps_now.short","how":"msg.item.gait_steps_now.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.lachman","family":"knee.lachman","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/looseness","positions":["supine"],"end_feels":["firm","soft"],"counts":[{"as":"positive","end_feels":["soft"]},{"as":"equivocal","grades":["1"],"end_feels":["firm"]},{"as":"positive","grades":["1","2"]},{"as":"negative","grades":["0"]}],"seconds":30,"discomfort":"some","safety":false,"text":{"short":"msg.item.knee_lachman.short","how":"msg.item.knee_lachman.how","positive":"msg.item.knee_lachman.positive","errors":"msg.item.knee_lachman.errors"},"instead":[{"when":"heavy_thigh","item":"knee.lachman_prone","measured":"leg.invented_girth","over":500,"source":"INVENTED2"},{"when":"guarding","item":"knee.valgus_30"}],"sources":["INVENTED1"],"status":"read"},
{"item":"nerve.invented_power","family":"nerve.invented_power","region":"nerve","sides":["left","right"],"value":"grade","scale":"invented/power","seconds":10,"discomfort":"none","safety":false,"text":{"short":"msg.item.nerve_invented_power.short","how":"msg.item.nerve_invented_power.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.mcmurray","family":"knee.mcmurray","region":"knee","sides":["left","right"],"value":"test","seconds":30,"discomfort":"some","safety":false,"text":{"short":"msg.item.knee_mcmurray.short","how":"msg.item.knee_mcmurray.how","positive":"msg.item.knee_mcmurray.positive","errors":"msg.item.knee_mcmurray.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.patella_tender","family":"knee.bone_tender","region":"knee","sides":["left","right"],"value":"answer","seconds":10,"discomfort":"low","safety":true,"text":{"short":"msg.item.knee_patella_tender.short","how":"msg.item.knee_patella_tender.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.mechanism","family":"history.mechanism","region":"history","sides":["midline"],"value":"choice","choices":["twist","fall"],"seconds":10,"discomfort":"none","safety":false,"text":{"short":"msg.item.history_mechanism.short","how":"msg.item.history_mechanism.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.invented_choices","family":"history.invented_choices","region":"history","sides":["midline"],"value":"choices","choices":["none_of_these","green","blue"],"seconds":10,"discomfort":"none","safety":true,"text":{"short":"msg.item.history_invented_choices.short","how":"msg.item.history_invented_choices.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.own_words","family":"history.own_words","region":"history","sides":["midline"],"value":"text","seconds":10,"discomfort":"none","safety":false,"text":{"short":"msg.item.history_own_words.short","how":"msg.item.history_own_words.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.lachman_prone","family":"knee.lachman","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/looseness","positions":["prone"],"end_feels":["firm","soft"],"counts":[{"as":"positive","grades":["1","2"]},{"as":"negative","grades":["0"]}],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_lachman_prone.short","how":"msg.item.knee_lachman_prone.how","positive":"msg.item.knee_lachman_prone.positive","care":"msg.item.knee_lachman_prone.care","errors":"msg.item.knee_lachman_prone.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.anterior_drawer","family":"knee.anterior_drawer","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/looseness","positions":["supine"],"end_feels":["firm","soft"],"counts":[{"as":"positive","grades":["1","2"]},{"as":"negative","grades":["0"]}],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_anterior_drawer.short","how":"msg.item.knee_anterior_drawer.how","positive":"msg.item.knee_anterior_drawer.positive","care":"msg.item.knee_anterior_drawer.care","errors":"msg.item.knee_anterior_drawer.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.posterior_drawer","family":"knee.posterior_drawer","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/looseness","positions":["supine"],"end_feels":["firm","soft"],"counts":[{"as":"positive","grades":["1","2"]},{"as":"negative","grades":["0"]}],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_posterior_drawer.short","how":"msg.item.knee_posterior_drawer.how","positive":"msg.item.knee_posterior_drawer.positive","care":"msg.item.knee_posterior_drawer.care","errors":"msg.item.knee_posterior_drawer.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.valgus_30","family":"knee.valgus","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/looseness","positions":["supine"],"end_feels":["firm","soft"],"counts":[{"as":"positive","grades":["1","2"]},{"as":"negative","grades":["0"]}],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_valgus_30.short","how":"msg.item.knee_valgus_30.how","positive":"msg.item.knee_valgus_30.positive","care":"msg.item.knee_valgus_30.care","errors":"msg.item.knee_valgus_30.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.varus_30","family":"knee.varus","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/looseness","positions":["supine"],"end_feels":["firm","soft"],"counts":[{"as":"positive","grades":["1","2"]},{"as":"negative","grades":["0"]}],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_varus_30.short","how":"msg.item.knee_varus_30.how","positive":"msg.item.knee_varus_30.positive","care":"msg.item.knee_varus_30.care","errors":"msg.item.knee_varus_30.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.pivot_shift","family":"knee.pivot_shift","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/looseness","positions":["supine"],"end_feels":["firm","soft"],"counts":[{"as":"positive","grades":["1","2"]},{"as":"negative","grades":["0"]}],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_pivot_shift.short","how":"msg.item.knee_pivot_shift.how","positive":"msg.item.knee_pivot_shift.positive","care":"msg.item.knee_pivot_shift.care","errors":"msg.item.knee_pivot_shift.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.posterior_sag","family":"knee.posterior_sag","region":"knee","sides":["left","right"],"value":"test","positions":["supine"],"seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_posterior_sag.short","how":"msg.item.knee_posterior_sag.how","positive":"msg.item.knee_posterior_sag.positive","errors":"msg.item.knee_posterior_sag.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.straight_leg_raise_active","family":"knee.straight_leg_raise_active","region":"knee","sides":["left","right"],"value":"test","positions":["supine"],"seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_straight_leg_raise_active.short","how":"msg.item.knee_straight_leg_raise_active.how","positive":"msg.item.knee_straight_leg_raise_active.positive","errors":"msg.item.knee_straight_leg_raise_active.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.thessaly_20","family":"knee.thessaly_20","region":"knee","sides":["left","right"],"value":"test","positions":["standing"],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_thessaly_20.short","how":"msg.item.knee_thessaly_20.how","positive":"msg.item.knee_thessaly_20.positive","care":"msg.item.knee_thessaly_20.care","errors":"msg.item.knee_thessaly_20.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.squat","family":"knee.squat","region":"knee","sides":["left","right"],"value":"test","positions":["standing"],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_squat.short","how":"msg.item.knee_squat.how","positive":"msg.item.knee_squat.positive","care":"msg.item.knee_squat.care","errors":"msg.item.knee_squat.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.patellar_apprehension","family":"knee.patellar_apprehension","region":"knee","sides":["left","right"],"value":"test","positions":["supine"],"seconds":20,"discomfort":"low","safety":false,"withheld_by":["concern.invented"],"text":{"short":"msg.item.knee_patellar_apprehension.short","how":"msg.item.knee_patellar_apprehension.how","positive":"msg.item.knee_patellar_apprehension.positive","care":"msg.item.knee_patellar_apprehension.care","errors":"msg.item.knee_patellar_apprehension.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"hip.log_roll","family":"hip.log_roll","region":"hip","sides":["left","right"],"value":"test","positions":["supine"],"seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.hip_log_roll.short","how":"msg.item.hip_log_roll.how","positive":"msg.item.hip_log_roll.positive","errors":"msg.item.hip_log_roll.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.joint_line_medial_tender","family":"knee.joint_line","region":"knee","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.knee_joint_line_medial_tender.short","how":"msg.item.knee_joint_line_medial_tender.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.joint_line_lateral_tender","family":"knee.joint_line","region":"knee","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.knee_joint_line_lateral_tender.short","how":"msg.item.knee_joint_line_lateral_tender.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.fibular_head_tender","family":"knee.bone_tender","region":"knee","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.knee_fibular_head_tender.short","how":"msg.item.knee_fibular_head_tender.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.bone_tender_elsewhere","family":"knee.bone_tender","region":"knee","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.knee_bone_tender_elsewhere.short","how":"msg.item.knee_bone_tender_elsewhere.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.pop","family":"history.pop","region":"history","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.history_pop.short","how":"msg.item.history_pop.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.giving_way","family":"history.giving_way","region":"history","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.history_giving_way.short","how":"msg.item.history_giving_way.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.locking","family":"history.locking","region":"history","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.history_locking.short","how":"msg.item.history_locking.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.steps_at_once","family":"history.steps_at_once","region":"history","sides":["midline"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.history_steps_at_once.short","how":"msg.item.history_steps_at_once.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.fever","family":"history.fever","region":"history","sides":["midline"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.history_fever.short","how":"msg.item.history_fever.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"general.answers_reliable","family":"general.answers_reliable","region":"general","sides":["midline"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.general_answers_reliable.short","how":"msg.item.general_answers_reliable.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"body.pregnancy","family":"body.pregnancy","region":"body","sides":["midline"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.body_pregnancy.short","how":"msg.item.body_pregnancy.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"body.knee_fused","family":"body.knee_fused","region":"body","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.body_knee_fused.short","how":"msg.item.body_knee_fused.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"body.knee_replaced","family":"body.knee_replaced","region":"body","sides":["left","right"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.body_knee_replaced.short","how":"msg.item.body_knee_replaced.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"general.concern_invented","family":"general.concern","region":"general","sides":["left","right","midline"],"value":"answer","seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.general_concern_invented.short","how":"msg.item.general_concern_invented.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.film_result","family":"history.film_result","region":"history","sides":["left","right","midline"],"value":"choices","choices":["no_film","invented_seen","invented_not_seen"],"seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.history_film_result.short","how":"msg.item.history_film_result.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"history.swelling_onset","family":"history.swelling_onset","region":"history","sides":["left","right"],"value":"choice","choices":["none","within_2h","within_24h","later"],"seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.history_swelling_onset.short","how":"msg.item.history_swelling_onset.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"vessel.pulse_dorsalis_pedis","family":"vessel.pulse","region":"vessel","sides":["left","right"],"value":"grade","scale":"invented/power","positions":["supine","seated"],"seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.vessel_pulse_dorsalis_pedis.short","how":"msg.item.vessel_pulse_dorsalis_pedis.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"hip.internal_rotation_passive_seated","family":"hip.internal_rotation","region":"hip","sides":["left","right"],"value":"angle","axis":"external_rotation","end":"low","toward":"internal_rotation","unit":"deg","refuse":[-130,130],"confirm":[-90,30],"positions":["seated"],"instruments":["goniometer_long"],"seconds":20,"discomfort":"low","safety":true,"text":{"short":"msg.item.hip_internal_rotation_passive_seated.short","how":"msg.item.hip_internal_rotation_passive_seated.how"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.effusion_stroke","family":"knee.effusion","region":"knee","sides":["left","right"],"value":"grade","scale":"invented/wave","positions":["supine"],"counts":[{"as":"equivocal","grades":["trace"]},{"as":"positive","grades":["1+","3+"]},{"as":"negative","grades":["0"]}],"seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_effusion_stroke.short","how":"msg.item.knee_effusion_stroke.how","positive":"msg.item.knee_effusion_stroke.positive","errors":"msg.item.knee_effusion_stroke.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.effusion_ballottement","family":"knee.effusion","region":"knee","sides":["left","right"],"value":"test","positions":["supine"],"seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_effusion_ballottement.short","how":"msg.item.knee_effusion_ballottement.how","positive":"msg.item.knee_effusion_ballottement.positive","errors":"msg.item.knee_effusion_ballottement.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"knee.effusion_fluctuation","family":"knee.effusion","region":"knee","sides":["left","right"],"value":"test","positions":["supine"],"seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.knee_effusion_fluctuation.short","how":"msg.item.knee_effusion_fluctuation.how","positive":"msg.item.knee_effusion_fluctuation.positive","errors":"msg.item.knee_effusion_fluctuation.errors"},"sources":["INVENTED1"],"status":"read"},
{"item":"examiner.invented_span","family":"examiner.invented_span","region":"examiner","sides":["midline"],"value":"length","unit":"mm","refuse":[50,400],"seconds":20,"discomfort":"low","safety":false,"text":{"short":"msg.item.examiner_invented_span.short","how":"msg.item.examiner_invented_span.how"},"sources":["INVENTED1"],"status":"read"}
]})";

constexpr std::string_view scales_text = R"({"scales":[
{"scale":"invented/looseness","title":"msg.scale.invented_looseness.title","grades":[{"grade":"0","means":"msg.scale.invented_looseness.0","mm_high":4},{"grade":"1","means":"msg.scale.invented_looseness.1","mm_low":5,"mm_high":20},{"grade":"2","means":"msg.scale.invented_looseness.2","mm_low":21}],"takes_mm":true,"mm_most":50,"sources":["INVENTED2"],"status":"read"},
{"scale":"invented/wave","title":"msg.scale.invented_wave.title","grades":[{"grade":"0","means":"msg.scale.invented_wave.0"},{"grade":"trace","means":"msg.scale.invented_wave.trace"},{"grade":"1+","means":"msg.scale.invented_wave.1_plus"},{"grade":"3+","means":"msg.scale.invented_wave.3_plus"}],"sources":["INVENTED1"],"status":"read"},
{"scale":"invented/power","title":"msg.scale.invented_power.title","grades":[{"grade":"3","means":"msg.scale.invented_power.3"},{"grade":"4","means":"msg.scale.invented_power.4","shades":true}],"sources":["INVENTED2"],"status":"memory"}
]})";

constexpr std::string_view sequences_text = R"({"sequences":[
{"complaint":"invented_complaint","minutes":7,"not_to_miss":["msg.not_to_miss.invented_1","msg.not_to_miss.invented_2","msg.not_to_miss.invented_3"],"steps":[{"item":"knee.flexion_passive","position":"supine","minimum":true},{"item":"knee.mcmurray","position":"supine"},{"item":"history.fever","position":"supine"},{"item":"knee.lachman","position":"supine","minimum":true},{"item":"knee.squat","position":"standing"},{"item":"hip.log_roll","position":"supine","minimum_under":16},{"item":"knee.patellar_apprehension","position":"supine","late":true}],"sources":["INVENTED1"],"status":"convention"}
]})";

// The interval of the first row: 98.04 to 101.96 with n 100 is an SD of 1.96 / 1.96 x 10 = 10. The last row is printed as degrees
// short of straight and is turned.
constexpr std::string_view norms_text = R"({"norms":[
{"row":"norm.knee.flexion.passive.male.20-44.INVENTED1","family":"knee.flexion","toward":"flexion","mode":"passive","sex":"male","age_low":20,"age_high":44,"mean":100,"sd":10,"ci95_low":98.04,"ci95_high":101.96,"typical_low":80,"typical_high":120,"n":100,"position":"supine","instrument":"goniometer_long","preferred":true,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"norm.knee.flexion.passive.female.20-44.INVENTED1","family":"knee.flexion","toward":"flexion","mode":"passive","sex":"female","age_low":20,"age_high":44,"mean":110,"sd":5,"typical_low":100,"typical_high":120,"n":100,"position":"supine","instrument":"goniometer_long","preferred":true,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"norm.knee.flexion.passive.male.45-69.INVENTED2","family":"knee.flexion","toward":"flexion","mode":"passive","sex":"male","age_low":45,"age_high":69,"mean":90,"sd":10,"typical_low":70,"typical_high":110,"n":40,"preferred":true,"source":"INVENTED2","status":"memory","seen":"invented"},
{"row":"norm.knee.flexion.passive.male.30-40.INVENTED2","family":"knee.flexion","toward":"flexion","mode":"passive","sex":"male","age_low":30,"age_high":40,"mean":150,"sd":5,"typical_low":140,"typical_high":160,"n":40,"preferred":false,"source":"INVENTED2","status":"memory","seen":"invented"},
{"row":"norm.knee.flexion.active.any.20-69.INVENTED2","family":"knee.flexion","toward":"flexion","mode":"active","age_low":20,"age_high":69,"mean":90,"sd":10,"typical_low":70,"typical_high":110,"preferred":true,"source":"INVENTED2","status":"read","seen":"invented"},
{"row":"norm.knee.flexion.unspecified.any.18-99.INVENTED2","family":"knee.flexion","toward":"flexion","mode":"unspecified","age_low":18,"age_high":99,"mean":105,"typical_low":60,"typical_high":130,"limits":"printed","preferred":false,"source":"INVENTED2","status":"read","seen":"invented"},
{"row":"norm.knee.extension.passive.male.20-44.INVENTED1","family":"knee.extension","toward":"extension","mode":"passive","sex":"male","age_low":20,"age_high":44,"mean":2,"sd":3,"typical_low":-4,"typical_high":8,"n":100,"preferred":true,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"norm.knee.extension.passive.any.0-1.INVENTED2","family":"knee.extension","toward":"flexion","mode":"passive","age_low":0,"age_high":1,"mean":20,"sd":5,"ci95_low":19,"ci95_high":22,"typical_low":10,"typical_high":30,"preferred":false,"source":"INVENTED2","status":"memory","seen":"invented, as degrees short of straight"},
{"row":"norm.hip.internal_rotation.passive_supine.any.0-99.INVENTED1","family":"hip.internal_rotation","toward":"internal_rotation","mode":"passive","age_low":0,"age_high":99,"mean":40,"sd":10,"typical_low":20,"typical_high":60,"position":"supine","preferred":true,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"norm.hip.internal_rotation.passive_prone.any.0-99.INVENTED1","family":"hip.internal_rotation","toward":"internal_rotation","mode":"passive","age_low":0,"age_high":99,"mean":50,"sd":10,"typical_low":30,"typical_high":70,"position":"prone","preferred":true,"source":"INVENTED1","status":"read","seen":"invented"}
]})";

constexpr std::string_view errors_text = R"({"errors":[
{"row":"error.default.goniometer_long","instrument":"goniometer_long","mdc95":20,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"error.default.inclinometer","instrument":"inclinometer","mdc95":5,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"error.default.by_eye","instrument":"by_eye","mdc95":30,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"error.hip.goniometer_long","region":"hip","instrument":"goniometer_long","mdc95":25,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"error.knee.flexion_active.inclinometer.INVENTED2","item":"knee.flexion_active","instrument":"inclinometer","mdc95":4,"source":"INVENTED2","status":"read","seen":"invented"}
]})";

// The ratio of the pattern is wide and wrong on purpose: 0.1 to 0.8; the limit of moving far is 7.
constexpr std::string_view figures_text = R"({"figures":[
{"row":"figure.capsular_ratio.INVENTED1","about":"capsular_ratio","item":"knee.flexion_passive","low":0.1,"high":0.8,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"figure.hypermobile.INVENTED1","about":"hypermobile","item":"knee.extension_passive","value":7,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"figure.infant_extension.INVENTED2","about":"infant_extension","item":"knee.extension_passive","value":6,"source":"INVENTED2","status":"memory","seen":"invented"},
{"row":"figure.agreement.lachman.INVENTED1","about":"agreement","item":"knee.lachman","value":0.5,"low":0.4,"high":0.6,"n":10,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"figure.acute_laxity.INVENTED1","about":"acute_laxity","value":0.3,"source":"INVENTED1","status":"read","seen":"invented"}
]})";

constexpr std::string_view sources_text = R"({"sources":[
{"source":"INVENTED1","citation":"Nobody N. Numbers made up for tests. Nowhere 2001;1:1","status":"read"},
{"source":"INVENTED2","citation":"Nobody N. More numbers made up for tests. Nowhere 2001;1:2","status":"memory"}
]})";

constexpr std::string_view concerns_text = R"({"concerns":[
{"concern":"concern.invented","title":"msg.concern.invented","until":"msg.until.invented","answered_by":"general.concern_invented","film_opens":"invented_seen","film_lifts":"invented_not_seen","sources":["INVENTED1"],"status":"read"}
]})";

constexpr std::string_view alerts_text = R"({"alerts":[
{"alert":"alert.invented","urgency":"same_day","harm_minutes":60,"harm_from":"invented","asked_in":["invented_complaint"],"meanwhile":["msg.meanwhile.invented"],"stop":["knee.squat"],"opens":["concern.invented"],"tell_staff":["history.fever"],"sources":["INVENTED1"],"status":"read"}
]})";

constexpr const char* bodies_text = R"json({"bodies":[
{"body":"body_state.knee_fused","item":"body.knee_fused","opened_by_reason":"fused","reason_region":"knee","uncompared":["knee."],"comparators":["norm","other_side"],"silent":true,"gate":"fused","gate_regions":["knee"],"message":"msg.body.knee_fused","sources":["INVENTED1"],"status":"read"},
{"body":"body_state.knee_replaced","item":"body.knee_replaced","opened_by_reason":"implant","reason_region":"knee","uncompared":["knee."],"comparators":["norm","other_side"],"silent":true,"gate":"implant","gate_regions":["knee"],"message":"msg.body.knee_replaced","sources":["INVENTED1"],"status":"read"}
]})json";

}  // namespace

InventedTexts invented_texts() {
  InventedTexts texts;
  texts.edition = edition_text;
  texts.items = items_text;
  texts.scales = scales_text;
  texts.sequences = sequences_text;
  texts.norms = norms_text;
  texts.errors = errors_text;
  texts.sources = sources_text;
  texts.concerns = concerns_text;
  texts.figures = figures_text;
  texts.alerts = alerts_text;
  texts.bodies = bodies_text;
  return texts;
}

const reference::Edition& invented_edition() {
  static const auto loaded = [] {
    const InventedTexts texts = invented_texts();
    auto edition = reference::Edition::load(texts.view());
    if (!edition) {
      for (const wire::Fault& fault : edition.error().faults) {
        std::cerr << "invented edition: " << fault.code << " " << fault.path << " " << fault.expected << "\n";
      }
      std::abort();
    }
    return std::move(*edition);
  }();
  return *loaded;
}

}  // namespace limbledger
