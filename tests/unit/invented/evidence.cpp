#include "tests/unit/invented/evidence.hpp"

#include <cstdlib>
#include <iostream>

namespace limbledger {

namespace {

constexpr std::string_view accuracy_text = R"({"accuracy":[
{"row":"accuracy.invented.pull.INVENTED1","about":"invented tear","test":"pull","items":["knee.invented_pull"],"positive":"it moves","sens":0.8,"sens_low":0.7,"sens_high":0.87,"spec":0.8,"spec_low":0.7,"spec_high":0.87,"design":"meta_analysis","setting":"mixed","age_low":16,"confidence":"b","default_for":"any","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"accuracy.invented.pull_b.INVENTED1","about":"invented tear","test":"pull_b","items":["knee.invented_pull_b"],"positive":"it moves","sens":0.9,"spec":0.95,"design":"single_study","setting":"mixed","age_low":16,"confidence":"c","default_for":"any","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"accuracy.invented.loose.INVENTED1","about":"invented tear","test":"loose","items":["knee.lachman"],"positive":"loose","lr_pos":3,"lr_pos_low":2,"lr_pos_high":4.5,"lr_neg":0.3,"lr_neg_low":0.2,"lr_neg_high":0.45,"design":"single_study","setting":"mixed","age_low":16,"confidence":"c","default_for":"any","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"accuracy.invented.turn.INVENTED1","about":"invented tear","test":"turn","items":["knee.invented_turn"],"positive":"it turns","sens":0.6,"sens_low":0.5,"sens_high":0.7,"spec":0.9,"spec_low":0.8,"spec_high":0.95,"design":"meta_analysis","setting":"mixed","age_low":16,"confidence":"b","default_for":"any","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"accuracy.invented.turn_pop.INVENTED1","about":"invented tear","test":"turn_pop","items":["knee.invented_turn_c","history.invented_pop"],"positive":"both","lr_pos":3,"lr_pos_low":2,"lr_pos_high":4.5,"lr_neg":0.5,"lr_neg_low":0.4,"lr_neg_high":0.6,"design":"single_study","setting":"mixed","age_low":16,"confidence":"c","default_for":"any","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"accuracy.invented.pop.INVENTED1","about":"invented tear","test":"pop","items":["history.invented_pop"],"positive":"it popped","sens":0.5,"sens_low":0.4,"sens_high":0.6,"spec":0.75,"spec_low":0.7,"spec_high":0.8,"lr_pos":2,"design":"meta_analysis","setting":"mixed","age_low":16,"confidence":"b","default_for":"any","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"accuracy.another.swell.INVENTED1","about":"another tear","test":"swell","items":["history.invented_swelling"],"positive":"swollen","lr_pos":4,"lr_pos_low":3,"lr_pos_high":5,"lr_neg":0.5,"lr_neg_low":0.4,"lr_neg_high":0.6,"design":"single_study","setting":"mixed","age_low":16,"confidence":"c","default_for":"any","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"accuracy.another.press.INVENTED2","about":"another tear","test":"press","items":["knee.patella_tender"],"positive":"tender","sens":0.9,"spec":1,"counts":{"tp":9,"fn":1,"fp":0,"tn":10},"design":"case_control","setting":"mixed","age_low":16,"confidence":"d","default_for":"any","source":"INVENTED2","status":"memory","seen":"invented"}
]})";

constexpr std::string_view pretest_text = R"({"pretest":[
{"row":"pretest.invented.primary_care.INVENTED1","about":"invented tear","setting":"family doctors","population":"invented","low":0.1,"best":0.2,"high":0.4,"positive":20,"people":100,"default":true,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"pretest.invented.emergency.INVENTED1","about":"invented tear","setting":"accidents","population":"full of blood","low":0.4,"best":0.5,"high":0.6,"needs":["haemarthrosis"],"default":true,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"pretest.invented.orthopaedic.INVENTED1","about":"invented tear","setting":"operations","population":"a queue","low":0.8,"best":0.83,"high":0.86,"queue":true,"default":false,"because":"a queue","source":"INVENTED1","status":"read","seen":"invented"},
{"row":"pretest.another.primary_care.INVENTED1","about":"another tear","setting":"family doctors","population":"invented","low":0.1,"best":0.3,"high":0.5,"default":true,"source":"INVENTED1","status":"read","seen":"invented"},
{"row":"pretest.another.emergency.INVENTED1","about":"another tear","setting":"accidents","population":"full of blood","low":0.6,"best":0.7,"high":0.8,"needs":["haemarthrosis"],"default":true,"source":"INVENTED1","status":"read","seen":"invented"}
]})";

constexpr std::string_view conditions_text = R"({"conditions":[
{"condition":"condition.invented_tear","label":"msg.condition.acl_tear","texts":["invented tear"],"parts":["knee"],"computes":true,"danger":2,"status":"convention"},
{"condition":"condition.zz_tear","label":"msg.condition.pcl_tear","texts":["another tear"],"parts":["knee"],"computes":true,"danger":1,"status":"convention"},
{"condition":"condition.described","label":"msg.condition.mcl_tear","texts":["described only"],"computes":false,"because":"a flag","status":"convention"}
]})";

constexpr std::string_view settings_text = R"({"settings":[
{"text":"family doctors","setting":"primary_care"},
{"text":"accidents","setting":"emergency"},
{"text":"operations","setting":"orthopaedic"},
{"text":"elsewhere","because":"no exam has it"}
]})";

constexpr std::string_view groups_text = R"({"groups":[
{"condition":"condition.invented_tear","groups":[
{"group":"pull","structure":"pulled","members":[{"test":"pull","parts":[{"item":"knee.invented_pull","yes":["positive"],"no":["negative"]}],"at_least":1},{"test":"pull_b","parts":[{"item":"knee.invented_pull_b","yes":["positive"],"no":["negative"]}],"at_least":1},{"test":"loose","parts":[{"item":"knee.lachman","yes":["positive"],"no":["negative"]}],"at_least":1}]},
{"group":"turn","structure":"turned","members":[{"test":"turn","parts":[{"item":"knee.invented_turn","yes":["positive"],"no":["negative"]}],"at_least":1}]},
{"group":"history","structure":"told","members":[{"test":"turn_pop","parts":[{"item":"knee.invented_turn_c","yes":["positive"],"no":["negative"]},{"item":"history.invented_pop","yes":["positive"],"no":["negative"]}],"at_least":2},{"test":"pop","parts":[{"item":"history.invented_pop","yes":["positive"],"no":["negative"]}],"at_least":1}]}],
"confounders":[{"items":["knee.invented_pull","knee.invented_pull_b","knee.lachman"],"results":["positive"],"when":{"item":"knee.invented_sag","words":["positive"]},"because":"sag","status":"convention","seen":"invented"}],
"swelling_items":[],"status":"convention","seen":"invented"},
{"condition":"condition.zz_tear","groups":[
{"group":"swell","structure":"told","members":[{"test":"swell","parts":[{"item":"history.invented_swelling","yes":["positive"],"no":["negative"]}],"at_least":1}]},
{"group":"press","structure":"pressed","members":[{"test":"press","parts":[{"item":"knee.patella_tender","yes":["positive"],"no":["negative"]}],"at_least":1}]}],
"confounders":[],"swelling_items":["history.invented_swelling"],"status":"convention","seen":"invented"}
]})";

// One more item of the invented catalogue, unless it is there already.
void add_item(std::string& items, const std::string& id, const std::string& sides, const std::string& kind) {
  if (items.find("\"item\":\"" + id + "\"") != std::string::npos) {
    return;
  }
  std::string message = "msg.item." + id;
  message[message.find('.', 9)] = '_';
  const std::string row = "{\"item\":\"" + id + "\",\"family\":\"" + id + "\",\"region\":\"" + id.substr(0, id.find('.')) + "\",\"sides\":" + sides +
                          "," + kind + ",\"seconds\":10,\"discomfort\":\"low\",\"safety\":false,\"text\":{\"short\":\"" + message +
                          ".short\",\"how\":\"" + message + ".how\",\"positive\":\"" + message + ".positive\",\"errors\":\"" + message +
                          ".errors\"},\"sources\":[\"INVENTED1\"],\"status\":\"read\"}";
  items.insert(items.find_last_of('}') - 1, ",\n" + row);
}

}  // namespace

InventedEvidence invented_evidence() {
  InventedEvidence made;
  made.base = invented_texts();
  const std::string sided = R"(["left","right"])";
  for (const char* id : {"knee.invented_pull", "knee.invented_pull_b", "knee.invented_turn", "knee.invented_turn_c", "knee.invented_sag"}) {
    add_item(made.base.items, id, sided, R"("value":"test")");
  }
  for (const char* id : {"history.invented_pop", "history.invented_swelling"}) {
    add_item(made.base.items, id, sided, R"("value":"answer")");
  }
  add_item(made.base.items, "history.swelling_onset", sided, R"("value":"choice","choices":["none","within_2h","within_24h","later"])");
  made.accuracy = accuracy_text;
  made.pretest = pretest_text;
  made.conditions = conditions_text;
  made.settings = settings_text;
  made.groups = groups_text;
  return made;
}

const reference::Edition& invented_evidence_edition() {
  static const auto loaded = [] {
    const InventedEvidence texts = invented_evidence();
    auto edition = reference::Edition::load(texts.view());
    if (!edition) {
      for (const wire::Fault& fault : edition.error().faults) {
        std::cerr << "invented evidence: " << fault.code << " " << fault.path << " " << fault.expected << "\n";
      }
      std::abort();
    }
    return std::move(*edition);
  }();
  return *loaded;
}

}  // namespace limbledger
