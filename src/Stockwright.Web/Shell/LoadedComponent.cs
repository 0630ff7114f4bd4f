using Microsoft.AspNetCore.Components;

namespace Stockwright.Web.Shell;

/// <summary>
/// A component that is written once, when all it loads is there. The framework's own base also writes it while it still loads, and
/// when loading was broken off because the reader hung up: with nothing to write. Pages are written once on the server, so that
/// is never wanted. Whoever sets it again meanwhile waits for the one load, and is broken off with it. <c>Features/_Imports.razor</c> makes it the base of all of them.
/// </summary>
public abstract class LoadedComponent : ComponentBase
{
    private Task? loading;

    /// <inheritdoc/>
    public override async Task SetParametersAsync(ParameterView parameters)
    {
        parameters.SetParameterProperties(this);
        await (loading ??= LoadAsync());
        OnParametersSet();
        await OnParametersSetAsync();
        StateHasChanged();
    }

    private async Task LoadAsync()
    {
        OnInitialized();
        await OnInitializedAsync();
    }
}
