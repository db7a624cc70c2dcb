// Asks the service, and says in one word how that went.
const PATIENCE = 20_000;

export const signInAddress = '/fitting/field-app';

const isJson = (answer) => /[/+]json/.test(answer.headers.get('Content-Type') ?? '');

const problemOf = async (answer) => {
  try {
    const problem = await answer.json();
    return { code: String(problem.type ?? '').split('/').pop(), sentence: problem.detail ?? problem.title };
  } catch {
    return { code: 'not-understood', sentence: 'The service did not understand this entry.' };
  }
};

/**
 * outcome: ok, refused (with code and sentence), sign-in, other-fitter, or no-signal for all that a
 * later try may mend. An answer that is not the service's own (a hot spot's page) is no answer.
 */
export const ask = async (method, path, headers = {}, body = undefined) => {
  let answer;
  try {
    answer = await fetch(path, {
      method,
      headers: body === undefined ? headers : { ...headers, 'Content-Type': 'application/json' },
      body: body === undefined ? undefined : JSON.stringify(body),
      redirect: 'manual',
      cache: 'no-store',
      signal: AbortSignal.timeout(PATIENCE),
    });
  } catch {
    return { outcome: 'no-signal' };
  }
  if (answer.type === 'opaqueredirect' || answer.status === 401 || answer.status === 499) {
    return { outcome: 'sign-in' };
  }
  if (answer.status === 304) return { outcome: 'unchanged', answer };
  if (!isJson(answer)) return { outcome: 'no-signal' };
  if (answer.ok) {
    try {
      return { outcome: 'ok', answer, json: await answer.json() };
    } catch {
      return { outcome: 'no-signal' };
    }
  }
  if (answer.status >= 500 || [408, 425, 429].includes(answer.status)) return { outcome: 'no-signal' };
  const problem = await problemOf(answer);
  if (problem.code === 'entered-by-other') return { outcome: 'other-fitter', ...problem };
  if (problem.code === 'changed-meanwhile') return { outcome: 'no-signal' };
  return { outcome: 'refused', ...problem };
};
