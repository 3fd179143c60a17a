namespace HingeSelector.Rules.Firing;

/// <summary>The rule network could not be built or did not come to rest: a fault of the program or of a rule that no check refused.</summary>
public sealed class NetworkException(string message) : Exception(message);
