using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Another answer to a question with a closed list, at which the first choice is another.</summary>
/// <param name="Word">The question.</param>
/// <param name="Now">The answer on file.</param>
/// <param name="Value">The other answer.</param>
/// <param name="Becomes">The first choice then; null when nothing may be pulled.</param>
/// <param name="Outcome">What kind of answer it is then.</param>
public sealed record OtherAnswer(Word Word, string Now, string Value, Variant? Becomes, Outcome Outcome);
