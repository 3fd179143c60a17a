using HingeSelector.Body;
using HingeSelector.Statics;

namespace HingeSelector.Knowledge;

/// <summary>The numbers of the posture and statics model, as rules/model.yaml holds them.</summary>
/// <param name="Parameters">Named parameters with their ranges.</param>
/// <param name="Survey">Segment lengths as ratios of stature.</param>
/// <param name="Masses">Mass tables; the first is the one in use.</param>
/// <param name="Notes">What each parameter is and rests on, for pages.</param>
public sealed record Model(ModelParameters Parameters, SurveyTable Survey, IReadOnlyList<MassTablePair> Masses, IReadOnlyList<ParameterNote> Notes);
