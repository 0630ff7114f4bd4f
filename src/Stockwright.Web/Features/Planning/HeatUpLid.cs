namespace Stockwright.Web.Features.Planning;

/// <summary>The lid while the pot heats up.</summary>
public enum HeatUpLid
{
    /// <summary>Off, so that scum is lifted as it comes.</summary>
    Off,

    /// <summary>On until it begins to bubble.</summary>
    On,
}
