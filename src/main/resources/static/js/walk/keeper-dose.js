// What fell on the hand and face of who reads meters, against the limits for a working day: the rule of the server's
// dapple.light.dose.KeeperDose, held to the same table by a test.
const ACTINIC_LIMIT = 30;
const UVA_EYE_LIMIT = 10_000;
const COVER_SHARE = 0.5;

/**
 * @param moments [{uvIndex, minutes, hazard: {actinicPerUviMinute, uvaPerUviMinute, assumed}}]; J/m² per UV index and minute
 * @return {uviMinutes, actinic, uva: J/m²; share of the limit that binds; binding; advice; assumed}
 */
export function keeperDose(moments) {
  let uviMinutes = 0, actinic = 0, uva = 0, assumed = false;
  for (const {uvIndex, minutes, hazard} of moments) {
    const taken = uvIndex * minutes;
    uviMinutes += taken;
    actinic += taken * hazard.actinicPerUviMinute;
    uva += taken * hazard.uvaPerUviMinute;
    assumed ||= taken > 0 && hazard.assumed;
  }
  const share = Math.max(actinic / ACTINIC_LIMIT, uva / UVA_EYE_LIMIT);
  const binding = uva / UVA_EYE_LIMIT > actinic / ACTINIC_LIMIT ? 'UVA_EYE' : 'ACTINIC';
  const advice = share >= 1 ? 'STOP' : share >= COVER_SHARE ? 'COVER' : 'NONE';
  return {uviMinutes, actinic, uva, share, binding, advice, assumed};
}
